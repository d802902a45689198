import type { MatrixTold } from "#core/proving/lead-matrix.ts";
import type { Gains } from "#core/rig/effect.ts";
import { CupMeasure, type CupsOfPosition } from "./cup-measure.tsx";
import { FlexScreen } from "./flex-screen.tsx";
import { MeasureScreen } from "./measure-screen.tsx";
import { type After, ReturnMeasure } from "./return-measure.tsx";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  /** Of a lead that is proved: what it was measured to be. */
  readonly onMatrix?: (told: MatrixTold) => void;
  /** And what a healthy one brings where. */
  readonly meant?: Gains;
  readonly after?: After;
  /** Of a position whose cups are held to a microphone. */
  readonly cups?: CupsOfPosition;
}

/** The screens that measure, in a file that is fetched when one of them is opened. */
export function MeasuringScreens({ held, onMatrix, meant, after, cups }: Props) {
  if (cups) return <CupMeasure held={held} at={cups} />;
  if (onMatrix)
    return <ReturnMeasure held={held} onMatrix={onMatrix} meant={meant} after={after} />;
  return held.page.view.screen === "flex" ? (
    <FlexScreen held={held} />
  ) : (
    <MeasureScreen held={held} />
  );
}

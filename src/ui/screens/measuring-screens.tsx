import type { MeasuredGains } from "#core/checks/finding.ts";
import { FlexScreen } from "./flex-screen.tsx";
import { MeasureScreen } from "./measure-screen.tsx";
import { type After, ReturnMeasure } from "./return-measure.tsx";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  /** Of a lead that is proved: what it was measured to be. */
  readonly onMatrix?: (gains: MeasuredGains, error: number) => void;
  readonly after?: After;
}

/** The screens that measure, in a file that is fetched when one of them is opened. */
export function MeasuringScreens({ held, onMatrix, after }: Props) {
  if (onMatrix) return <ReturnMeasure held={held} onMatrix={onMatrix} after={after} />;
  return held.page.view.screen === "flex" ? (
    <FlexScreen held={held} />
  ) : (
    <MeasureScreen held={held} />
  );
}

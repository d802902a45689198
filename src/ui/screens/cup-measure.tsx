import { useEffect, useState } from "preact/hooks";
import type { Answered } from "#core/checks/finding.ts";
import { CupAtMicrophone } from "#ui/parts/cup-at-microphone.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { BackToQuestion } from "./back-to-question.tsx";
import { CupSteps } from "./cup-steps.tsx";
import { Heading } from "./frame.tsx";
import { ChooseWays } from "./measure-hook-up.tsx";
import { Names, useDevices } from "./measure-names.tsx";
import type { Ways } from "./page.ts";
import { useCups } from "./use-cups.ts";
import { type Instruments, useInstruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import { useWorld } from "./use-world.ts";

/** A position whose cups are held to a microphone instead of being asked. */
export interface CupsOfPosition {
  readonly position: string;
  /** As it is called. */
  readonly name: string;
  readonly onEnter: (answered: readonly Answered[]) => void;
  /** Back to what was asked. */
  readonly onBack: () => void;
}

interface Props {
  readonly held: Held;
  readonly at?: CupsOfPosition | undefined;
}

/** Both earcups heard by a microphone, one after the other. */
export function CupMeasure({ held, at }: Props) {
  const { title } = useWords().cups;
  const instruments = useInstruments(held);
  return (
    <section class="measure cups-heard">
      {at && <Tape>{at.name}</Tape>}
      {instruments ? (
        <Cups held={held} at={at} instruments={instruments} />
      ) : (
        <Heading>{title}</Heading>
      )}
    </section>
  );
}

export type CupProps = Props & { readonly instruments: Instruments };

/** From the warning, which stands before any microphone is opened, over the names and both ends to the cups. */
function Cups(props: CupProps) {
  const { held, at, instruments } = props;
  const [stage, setStage] = useState<"first" | "where" | "cups">("first");
  const ways: Ways = held.page.cupWays ?? { returns: "joined" };
  const bout = useCups(held, instruments, ways);
  useOutputOf(props);
  if (stage === "first")
    return <First at={at} onNext={() => setStage(held.page.cupWays ? "cups" : "where")} />;
  if (stage === "where") return <Where {...props} ways={ways} onNext={() => setStage("cups")} />;
  return <CupSteps {...props} ways={ways} bout={bout} onWhere={() => setStage("where")} />;
}

/** Within a session it goes out where the ears of the position hear it. */
function useOutputOf({ held, at, instruments: { measurer } }: CupProps): void {
  const { route } = held.world;
  const within = at !== undefined;
  useEffect(() => {
    if (within) measurer.use(route);
  }, [within, measurer, route]);
}

interface FirstProps extends Pick<Props, "at"> {
  readonly onNext: () => void;
}

function First({ at, onNext }: FirstProps) {
  const { title, first } = useWords().cups;
  return (
    <>
      <Heading key="first">{title}</Heading>
      <p class="hint">{first.hint}</p>
      <CupAtMicrophone held="left" />
      <p class="wired-only">{first.wired}</p>
      <div class="foot">
        <button type="button" class="main" onClick={onNext}>
          {first.goOn}
        </button>
        <BackToQuestion at={at} />
      </div>
    </>
  );
}

type WhereProps = CupProps & { readonly ways: Ways; readonly onNext: () => void };

/** The names, where the browser keeps them back, and then both ends. */
function Where({ held, instruments, ways, onNext }: WhereProps) {
  const { cups, measure } = useWords();
  const { recorder, measurer } = instruments;
  const { devices, ask } = useDevices(recorder, held.edges.outputs);
  const [without, setWithout] = useState(false);
  const world = useWorld(measurer);
  const onWays = (cupWays: Ways) => held.change((one) => ({ ...one, cupWays }));
  if (devices === undefined) return <Heading key="wait">{cups.title}</Heading>;
  if (devices.inputs.length === 0 && !without)
    return (
      <>
        <Heading key="names">{measure.names.microphones}</Heading>
        <Names devices={devices} onAsk={ask} onWithout={() => setWithout(true)} />
      </>
    );
  const next = () => {
    onWays(ways);
    onNext();
  };
  const at = { held, measurer, world, devices, ways, onWays };
  return <ChooseWays {...at} asks="cups" onNext={next} />;
}

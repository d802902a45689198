import type { MeasurerWorld } from "#audio/measurer.ts";
import type { Seconds } from "#core/units/units.ts";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { Heading } from "./frame.tsx";
import { FindingLevel, GoingOut, Stop } from "./measure-level.tsx";
import { useWays } from "./measure-prepare.tsx";
import type { Ways } from "./page.ts";
import type { After } from "./return-measure.tsx";
import { ReturnRefused } from "./return-refused.tsx";
import { ReturnResult } from "./return-result.tsx";
import { SaveRecording } from "./save-recording.tsx";
import type { Instruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import type { Against, ReturnBout, ReturnStep } from "./use-return.ts";
import { useWorld } from "./use-world.ts";

export interface ReturnStepProps {
  readonly held: Held;
  readonly instruments: Instruments;
  readonly bout: ReturnBout;
  readonly against: Against;
  readonly onAgainst: (against: Against) => void;
  readonly after: After;
}

/** From the press to the result. */
export function ReturnSteps(props: ReturnStepProps) {
  const { held, instruments, bout, onAgainst, after } = props;
  const { measurer } = instruments;
  const { ways } = useWays(held);
  const world = useWorld(measurer);
  const { step } = bout;
  switch (step.at) {
    case "before":
      return null;
    case "level":
      return <FindingLevel held={held} measurer={measurer} world={world} returns={ways.returns} />;
    case "by hand":
      return <ByHand {...props} world={world} />;
    case "measuring":
      return <Measuring {...props} world={world} done={step.done} total={step.total} />;
    case "judging":
      return <Heading key="judging">Working it out</Heading>;
    case "swap":
      return <Swap {...swapWords.good} bout={bout} world={world} returns={ways.returns} />;
    case "refused":
      return <ReturnRefused {...step} held={held} bout={bout} onAgainst={onAgainst} />;
    case "told":
      // What came by one input alone is no finding, and is shown until it is measured again.
      if (after === "another" && step.taken.measured.entries.length > 1)
        return <Swap {...swapWords.last} bout={bout} world={world} returns={ways.returns} />;
      return <Told {...props} {...step} returns={ways.returns} />;
  }
}

type ToldProps = ReturnStepProps &
  Pick<Extract<ReturnStep, { at: "told" }>, "taken" | "granted" | "capture"> &
  Pick<Ways, "returns">;

const Told = ({ held, bout, against, after, taken, granted, capture, returns }: ToldProps) => (
  <ReturnResult
    taken={taken}
    healthy={against === "healthy" ? bout.healthy : undefined}
    granted={granted}
    returns={returns}
  >
    {after === "the same" && (
      <p class="move">
        What it is cannot be told from this yet. Leave the lead in, touch nothing, and measure it
        once more.
      </p>
    )}
    <div class="foot">
      <button type="button" class="main" onClick={bout.measure}>
        {after === "the same" ? "Measure the same once more" : "Measure the next one"}
      </button>
      <button type="button" class="quiet" onClick={() => bout.again(true)}>
        begin anew
      </button>
      <SaveRecording held={held} capture={capture} />
    </div>
  </ReturnResult>
);

type AtWork = ReturnStepProps & { readonly world: MeasurerWorld };

const ByHand = ({ held, instruments: { measurer }, bout, world }: AtWork) => (
  <>
    <Heading key="by hand">Raise it until enough comes back</Heading>
    <p class="hint">
      A step at a time: to 40 dB over what the input shows of itself, and never to its top.
    </p>
    <GoingOut measurer={measurer} world={world} free />
    <div class="foot">
      <button type="button" class="main" onClick={bout.measure}>
        Measure at this level
      </button>
      <button type="button" class="quiet" onClick={held.silence}>
        stop it
      </button>
    </div>
  </>
);

function Measuring({
  held,
  instruments: { measurer },
  world,
  done,
  total,
}: AtWork & { readonly done: Seconds; readonly total: Seconds }) {
  const { ways } = useWays(held);
  return (
    <>
      <Heading key="measuring">Measuring</Heading>
      <p class="hint">Leave the lead alone until it is done.</p>
      <HookUpPicture first={world.route.first} returns={ways.returns} />
      <p role="status" class="how-far">
        <progress value={done / total} />{" "}
        {total > 1 && `${Math.max(0, Math.ceil(total - done))} s left`}
      </p>
      <GoingOut measurer={measurer} world={world} free={false} />
      <Stop onStop={held.silence} />
    </>
  );
}

interface SwapProps {
  readonly title: string;
  readonly hint: string;
  readonly anew: string;
  readonly bout: ReturnBout;
  readonly world: MeasurerWorld;
  readonly returns: Ways["returns"];
}

const swapWords = {
  good: {
    title: "Now the lead in question, in its place",
    hint: "The good one is measured, and it is silent. Take it out, put the other one in, and touch nothing else: no gain, no level.",
    anew: "another good one",
  },
  last: {
    title: "Now the next lead, in the same place",
    hint: "It is silent. Touch nothing else: no gain, no level.",
    anew: "begin anew",
  },
} as const;

const Swap = ({ title, hint, anew, bout, world, returns }: SwapProps) => (
  <>
    <Heading key={title}>{title}</Heading>
    <p class="hint">{hint}</p>
    <HookUpPicture first={world.route.first} returns={returns} />
    <div class="foot">
      <button type="button" class="main" onClick={bout.measure}>
        Measure it
      </button>
      <button type="button" class="quiet" onClick={() => bout.again(true)}>
        {anew}
      </button>
    </div>
  </>
);

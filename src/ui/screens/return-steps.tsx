import type { MeasurerWorld } from "#audio/measurer.ts";
import type { Seconds } from "#core/units/units.ts";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
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
  const { returning } = useWords();
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
      return <Heading key="judging">{returning.judging}</Heading>;
    case "swap":
      return <Swap {...returning.swap.good} bout={bout} world={world} returns={ways.returns} />;
    case "refused":
      return <ReturnRefused {...step} held={held} bout={bout} onAgainst={onAgainst} />;
    case "told":
      // What came by one input alone is no finding, and is shown until it is measured again.
      if (after === "another" && step.taken.measured.entries.length > 1)
        return <Swap {...returning.swap.last} bout={bout} world={world} returns={ways.returns} />;
      return <Told {...props} {...step} returns={ways.returns} />;
  }
}

type ToldProps = ReturnStepProps &
  Pick<Extract<ReturnStep, { at: "told" }>, "taken" | "granted" | "capture"> &
  Pick<Ways, "returns">;

function Told({ held, bout, against, after, taken, granted, capture, returns }: ToldProps) {
  const { told } = useWords().returning;
  return (
    <ReturnResult
      taken={taken}
      healthy={against === "healthy" ? bout.healthy : undefined}
      granted={granted}
      returns={returns}
    >
      {after === "the same" && <p class="move">{told.onceMore}</p>}
      <div class="foot">
        <button type="button" class="main" onClick={bout.measure}>
          {after === "the same" ? told.same : told.next}
        </button>
        <button type="button" class="quiet" onClick={() => bout.again(true)}>
          {told.anew}
        </button>
        <SaveRecording held={held} capture={capture} />
      </div>
    </ReturnResult>
  );
}

type AtWork = ReturnStepProps & { readonly world: MeasurerWorld };

function ByHand({ held, instruments: { measurer }, bout, world }: AtWork) {
  const { byHand } = useWords().returning;
  return (
    <>
      <Heading key="by hand">{byHand.title}</Heading>
      <p class="hint">{byHand.hint}</p>
      <GoingOut measurer={measurer} world={world} free />
      <div class="foot">
        <button type="button" class="main" onClick={bout.measure}>
          {byHand.measure}
        </button>
        <button type="button" class="quiet" onClick={held.silence}>
          {byHand.stop}
        </button>
      </div>
    </>
  );
}

function Measuring({
  held,
  instruments: { measurer },
  world,
  done,
  total,
}: AtWork & { readonly done: Seconds; readonly total: Seconds }) {
  const { measure, returning } = useWords();
  const { ways } = useWays(held);
  return (
    <>
      <Heading key="measuring">{returning.measuring.title}</Heading>
      <p class="hint">{returning.measuring.hint}</p>
      <HookUpPicture first={world.route.first} returns={ways.returns} />
      <p role="status" class="how-far">
        <progress value={done / total} />{" "}
        {total > 1 && measure.level.left(Math.max(0, Math.ceil(total - done)))}
      </p>
      <GoingOut measurer={measurer} world={world} free={false} />
      <Stop onStop={held.silence} />
    </>
  );
}

type SwapWords = Words["returning"]["swap"]["good"];

interface SwapProps extends SwapWords {
  readonly bout: ReturnBout;
  readonly world: MeasurerWorld;
  readonly returns: Ways["returns"];
}

function Swap({ title, hint, anew, bout, world, returns }: SwapProps) {
  const { swap } = useWords().returning;
  return (
    <>
      <Heading key={title}>{title}</Heading>
      <p class="hint">{hint}</p>
      <HookUpPicture first={world.route.first} returns={returns} />
      <div class="foot">
        <button type="button" class="main" onClick={bout.measure}>
          {swap.measure}
        </button>
        <button type="button" class="quiet" onClick={() => bout.again(true)}>
          {anew}
        </button>
      </div>
    </>
  );
}

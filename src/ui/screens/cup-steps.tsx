import type { Seconds } from "#core/units/units.ts";
import { CupAtMicrophone } from "#ui/parts/cup-at-microphone.tsx";
import type { Side } from "#ui/parts/effect-lanes.ts";
import { BackToQuestion } from "./back-to-question.tsx";
import type { CupProps } from "./cup-measure.tsx";
import { CupResult } from "./cup-result.tsx";
import { Heading } from "./frame.tsx";
import { CupCautions } from "./measure-cautions.tsx";
import { GoingOut, Stop } from "./measure-level.tsx";
import type { Ways } from "./page.ts";
import { refusedWords } from "./return-refused.tsx";
import { type CupBout, otherSide } from "./use-cups.ts";
import type { Refused } from "./use-return.ts";
import { useWorld } from "./use-world.ts";

type Props = CupProps & {
  readonly ways: Ways;
  readonly bout: CupBout;
  /** Another output or microphone. */
  readonly onWhere: () => void;
};

/** From the first cup to what both give. */
export function CupSteps(props: Props) {
  const { at, bout } = props;
  const { step } = bout;
  switch (step.at) {
    case "hold":
      return <Hold {...props} side={step.side} trouble={step.trouble} />;
    case "level":
      return <AtWork {...props} side={step.side} title="Finding the level" />;
    case "measuring":
      return <AtWork {...props} side={step.side} title="Listening" how={step} />;
    case "judging":
      return <Heading key="judging">Working it out</Heading>;
    case "refused":
      return <CupRefused bout={bout} side={step.side} refused={step.refused} />;
    case "told":
      return <CupResult left={step.left} right={step.right} at={at} onAnew={bout.anew} />;
  }
}

type HoldProps = Props & { readonly side: Side; readonly trouble: string | undefined };

/** A cup is to be held to the microphone. */
function Hold({ instruments, at, ways, bout, onWhere, side, trouble }: HoldProps) {
  const { route } = useWorld(instruments.measurer);
  const second = bout.taken[otherSide(side)] !== undefined;
  return (
    <>
      {trouble && (
        <p class="message" role="alert">
          {trouble}
        </p>
      )}
      <Heading key={`hold ${side}`}>
        {`${second ? "Now hold" : "Hold"} the ${side} cup to the microphone`}
      </Heading>
      <p class="hint">{second ? secondHint(side) : firstHint}</p>
      <CupAtMicrophone held={side} />
      <p class="from-to">
        {`Out of ${route.device?.name ?? "whatever the system plays to"}, heard by ${ways.input?.name ?? "whatever the system records from"}.`}{" "}
        <button type="button" class="quiet" onClick={onWhere}>
          others
        </button>
      </p>
      <CupCautions />
      <div class="foot">
        <button type="button" class="main" onClick={() => bout.listen(side)}>
          {`Listen to the ${side} cup`}
        </button>
        {second && (
          <button type="button" class="quiet" onClick={bout.anew}>
            begin anew
          </button>
        )}
        <BackToQuestion at={at} />
      </div>
    </>
  );
}

const firstHint =
  "The one marked so, wherever it sounds. Flat and close, as near as it will go, and the other cup turned away. Keep it still until it is done.";
const secondHint = (side: Side): string =>
  `The ${otherSide(side)} one is heard, and it is silent. The same place and the same distance, and touch no level.`;

type AtWorkProps = Props & {
  readonly side: Side;
  readonly title: string;
  readonly how?: { readonly done: Seconds; readonly total: Seconds };
};

/** Something plays, and the microphone is open. */
function AtWork({ held, instruments: { measurer }, side, title, how }: AtWorkProps) {
  const world = useWorld(measurer);
  return (
    <>
      <Heading key={title}>{`${title}: the ${side} cup`}</Heading>
      <p class="hint">
        {how
          ? "Keep it still, and the room quiet, until it is done."
          : "Keep it still. It goes up in slow steps until the microphone hears enough."}
      </p>
      <CupAtMicrophone held={side} playing />
      {how && (
        <p role="status" class="how-far">
          <progress value={how.done / how.total} />{" "}
          {how.total > 1 && `${Math.max(0, Math.ceil(how.total - how.done))} s left`}
        </p>
      )}
      <GoingOut measurer={measurer} world={world} free={false} />
      <Stop onStop={held.silence} />
    </>
  );
}

interface RefusedProps {
  readonly bout: CupBout;
  readonly side: Side;
  readonly refused: Refused;
}

/** Why a cup says nothing, and what to do. What is too loud beside the other cup gets a level of its own, and the other one is heard again at that. */
function CupRefused({ bout, side, refused }: RefusedProps) {
  const second = bout.taken[otherSide(side)] !== undefined;
  const tooLoud = refused.why === "not measured" && refused.how.refused === "clipped";
  return (
    <>
      <Heading key="refused">{`The ${side} cup cannot be judged so`}</Heading>
      <p class="why-not" role="alert">
        {refusedWords(refused, "cup")}
      </p>
      {second && tooLoud && (
        <p class="hint">
          {`Or find the level at this cup, which is the louder one, and then hold the ${otherSide(side)} one again.`}
        </p>
      )}
      <div class="foot">
        <button type="button" class="main" onClick={() => bout.listen(side, tooLoud)}>
          {tooLoud ? "Find the level at this cup" : "Listen again"}
        </button>
        <button type="button" class="quiet" onClick={() => bout.hold(side)}>
          back to the cup
        </button>
      </div>
    </>
  );
}

import type { Seconds } from "#core/units/units.ts";
import { CupAtMicrophone } from "#ui/parts/cup-at-microphone.tsx";
import type { Side } from "#ui/parts/effect-lanes.ts";
import { useWords } from "#ui/words/use-words.ts";
import { BackToQuestion } from "./back-to-question.tsx";
import type { CupProps } from "./cup-measure.tsx";
import { CupResult } from "./cup-result.tsx";
import { Heading } from "./frame.tsx";
import { CupCautions } from "./measure-cautions.tsx";
import { GoingOut, Stop } from "./measure-level.tsx";
import { whyBefore } from "./measure-words.ts";
import type { Ways } from "./page.ts";
import { refusedWords } from "./return-refused.tsx";
import { type CupBout, otherSide } from "./use-cups.ts";
import type { BeforeStep, Refused } from "./use-return.ts";
import { useWorld } from "./use-world.ts";

type Props = CupProps & {
  readonly ways: Ways;
  readonly bout: CupBout;
  /** Another output or microphone. */
  readonly onWhere: () => void;
};

/** From the first cup to what both give. */
export function CupSteps(props: Props) {
  const { work } = useWords().cups;
  const { at, bout } = props;
  const { step } = bout;
  switch (step.at) {
    case "hold":
      return <Hold {...props} side={step.side} before={step.before} />;
    case "level":
      return <AtWork {...props} side={step.side} title={work.level(step.side)} />;
    case "measuring":
      return <AtWork {...props} side={step.side} title={work.listening(step.side)} how={step} />;
    case "judging":
      return <Heading key="judging">{work.judging}</Heading>;
    case "refused":
      return <CupRefused bout={bout} side={step.side} refused={step.refused} />;
    case "told":
      return <CupResult left={step.left} right={step.right} at={at} onAnew={bout.anew} />;
  }
}

type HoldProps = Props & { readonly side: Side; readonly before: BeforeStep | undefined };

/** A cup is to be held to the microphone. */
function Hold({ instruments, at, ways, bout, onWhere, side, before }: HoldProps) {
  const words = useWords();
  const { hold } = words.cups;
  const { ways: where } = words.measure;
  const trouble = before && whyBefore(words, before.trouble, before.found);
  const { route } = useWorld(instruments.measurer);
  const second = bout.taken[otherSide(side)] !== undefined;
  return (
    <>
      {trouble && (
        <p class="message" role="alert">
          {trouble}
        </p>
      )}
      <Heading key={`hold ${side}`}>{(second ? hold.second : hold.first)(side)}</Heading>
      <p class="hint">{second ? hold.secondHint(otherSide(side)) : hold.firstHint}</p>
      <CupAtMicrophone held={side} />
      <p class="from-to">
        {where.heardBy(
          route.device?.name ?? words.sounding.system,
          ways.input?.name ?? where.systemIn,
        )}{" "}
        <button type="button" class="quiet" onClick={onWhere}>
          {where.others}
        </button>
      </p>
      <CupCautions />
      <div class="foot">
        <button type="button" class="main" onClick={() => bout.listen(side)}>
          {hold.listen(side)}
        </button>
        {second && (
          <button type="button" class="quiet" onClick={bout.anew}>
            {hold.anew}
          </button>
        )}
        <BackToQuestion at={at} />
      </div>
    </>
  );
}

type AtWorkProps = Props & {
  readonly side: Side;
  readonly title: string;
  readonly how?: { readonly done: Seconds; readonly total: Seconds };
};

/** Something plays, and the microphone is open. */
function AtWork({ held, instruments: { measurer }, side, title, how }: AtWorkProps) {
  const { cups, measure } = useWords();
  const world = useWorld(measurer);
  return (
    <>
      <Heading key={title}>{title}</Heading>
      <p class="hint">{how ? cups.work.listeningHint : cups.work.levelHint}</p>
      <CupAtMicrophone held={side} playing />
      {how && (
        <p role="status" class="how-far">
          <progress value={how.done / how.total} />{" "}
          {how.total > 1 && measure.level.left(Math.max(0, Math.ceil(how.total - how.done)))}
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
  const words = useWords();
  const texts = words.cups.refused;
  const second = bout.taken[otherSide(side)] !== undefined;
  const tooLoud = refused.why === "not measured" && refused.how.refused === "clipped";
  return (
    <>
      <Heading key="refused">{texts.title(side)}</Heading>
      <p class="why-not" role="alert">
        {refusedWords(words, refused, "cup")}
      </p>
      {second && tooLoud && <p class="hint">{texts.orLevel(otherSide(side))}</p>}
      <div class="foot">
        <button type="button" class="main" onClick={() => bout.listen(side, tooLoud)}>
          {tooLoud ? texts.level : texts.again}
        </button>
        <button type="button" class="quiet" onClick={() => bout.hold(side)}>
          {texts.back}
        </button>
      </div>
    </>
  );
}

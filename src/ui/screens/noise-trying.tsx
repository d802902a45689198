import { useRef } from "preact/hooks";
import { answersTo } from "#core/checks/noise.ts";
import type { Hunt, NextTrial } from "#core/noises/hunt.ts";
import type { NoiseCaution } from "#core/noises/remedy.ts";
import { seatName } from "#core/report/names.ts";
import { noiseAnswer, trialQuestion, trialWords } from "#core/report/noise-words.ts";
import { capital } from "#core/report/phrases.ts";
import { byDigit, Digit, useDigits } from "#ui/parts/digits.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { TrialPicture } from "#ui/parts/trial-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { LastAnswer } from "./last-answer.tsx";
import { NoiseSuspects } from "./noise-suspects.tsx";
import { NoiseWay } from "./noise-way.tsx";
import type { AtPosition } from "./position-screen.tsx";

type Props = AtPosition & { readonly hunt: Hunt; readonly next: NextTrial };

/** One thing to try, and what became of the noise. */
export function NoiseTrying({ held, ready, position, hunt, next }: Props) {
  const { language, noises, figures } = useWords();
  const { rig } = ready.derived;
  const { trial } = next;
  const again = hunt.tried.some((one) => JSON.stringify(one.trial) === JSON.stringify(trial));
  return (
    <section class="noise">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>{trialWords(language, rig, trial, hunt.noise)}</Heading>
      <p class="dim">{again ? noises.onceMore : noises.listen[hunt.noise]}</p>
      <Mains hunt={hunt} next={next} />
      <NoiseWay ready={ready} hunt={hunt} trial={trial} />
      <div class="columns">
        <div class="trying">
          <TrialPicture name={trial.try} />
          <NoiseAnswers held={held} hunt={hunt} next={next} />
          <p class="dim">{noises.putBack}</p>
        </div>
        <div class="beside">
          <NoiseSuspects ready={ready} hunt={hunt} heading={noises.soFar} />
          <p class="dim">{language.noises.tells(figures.fixed(next.bits, 1), next.seconds)}</p>
          <p>
            <button
              type="button"
              class="quiet"
              onClick={() => held.show({ screen: "position", position })}
            >
              {noises.isGone}
            </button>
          </p>
        </div>
      </div>
      <LastAnswer held={held} />
    </section>
  );
}

/** Where hands are at supplies, what keeps them alive. */
function Mains({ hunt: { noise }, next: { trial } }: Pick<Props, "hunt" | "next">) {
  const { language } = useWords();
  if (noise !== "hum") return null;
  const atSupply = trial.try === "on battery" || trial.try === "one outlet";
  const shown: readonly NoiseCaution[] = [
    ...(atSupply ? (["never lift a mains earth"] as const) : []),
    "a tingle",
  ];
  return (
    <ul class="noise-cautions">
      {shown.map((one) => (
        <li key={one}>{language.noises.cautions[one]}</li>
      ))}
    </ul>
  );
}

/** The closed list, a number key for each; beneath it that nobody can tell, or that it cannot be tried. */
function NoiseAnswers({ held, hunt, next: { trial } }: Pick<Props, "held" | "hunt" | "next">) {
  const { language, doing, noises } = useWords();
  const all = useRef<HTMLDivElement>(null);
  useDigits(all);
  const { position, noise } = hunt;
  const answers = answersTo(trial.try);
  const enter = (given: readonly string[]) =>
    held.enter({
      entry: "finding",
      finding: { asked: { check: "noise", position, noise, trial }, results: [given] },
    });
  const question = trialQuestion(language, trial, noise);
  return (
    <div ref={all}>
      <p class="what-for">{question}</p>
      <Roving label={question} kind="points noise-answers">
        {answers.map((answer, at) => (
          <button
            key={answer}
            type="button"
            class="point"
            {...byDigit(at + 1)}
            onClick={() => enter([answer])}
          >
            <span>{capital(noiseAnswer(language, answer))}</span>
            <Digit place={at + 1} />
          </button>
        ))}
      </Roving>
      <div class="foot">
        <button
          type="button"
          class="say"
          {...byDigit(answers.length + 1)}
          onClick={() => enter(answers)}
        >
          {noises.cannotTell}
          <Digit place={answers.length + 1} />
        </button>
        <button type="button" class="say" onClick={() => enter([])}>
          {doing.notPossible}
        </button>
      </div>
    </div>
  );
}

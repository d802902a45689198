import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { sentence } from "#core/report/phrases.ts";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { answer, type Question, questionAfter, type Round, roundAt } from "#core/training/round.ts";
import type { Sounding } from "#core/training/soundings.ts";
import { useLetters } from "#ui/parts/keys.ts";
import { useWords } from "#ui/words/use-words.ts";
import { OwnCautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import { Choices, nameOf, outcomeOf } from "./training-choices.tsx";
import { TrainingScore } from "./training-score.tsx";
import type { RoundSoFar } from "./training-so-far.ts";
import { type QuestionSounds, useQuestionSounds } from "./training-sounds.ts";
import { TwoVersions, versionOf } from "./two-versions.tsx";
import type { Held } from "./use-page.ts";
import { ownHeadphones, useArrive } from "./use-place.ts";

/** One fault after another, to be named by ear. The round is worked out once the screen stands. */
export function Training({ held }: { readonly held: Held }) {
  const words = useWords().training;
  const { training } = held.page;
  useArrive(held, ownHeadphones);
  const seed = training?.seed;
  const [round, setRound] = useState<Round>();
  useEffect(() => {
    if (seed === undefined) return;
    const soon = setTimeout(() => {
      const rig = build(fromHeadphoneSocket(words.seat, [words.you]));
      setRound(roundAt(rig, "position 1", seed));
    });
    return () => clearTimeout(soon);
  }, [seed, words]);
  return (
    <section class="training">
      <Heading>{words.title}</Heading>
      {training && round ? (
        <Asked held={held} training={training} round={round} />
      ) : (
        <p>{words.making}</p>
      )}
    </section>
  );
}

interface AskedProps {
  readonly held: Held;
  readonly training: RoundSoFar;
  readonly round: Round;
}

function Asked({ held, training, round }: AskedProps) {
  const words = useWords();
  const { answered, given } = training;
  const question = useMemo(() => questionAfter(round, answered), [round, answered]);
  const taken = question.choices.find(({ id }) => id === given);
  const sounds = useQuestionSounds(held, round, question, taken);
  const go = (next: RoundSoFar) => held.change((page) => ({ ...page, training: next }));
  const next = () => {
    if (given !== undefined)
      go({ seed: training.seed, answered: [...answered, answer(question, given)] });
  };
  const press = (id: string) =>
    given === undefined
      ? go({ ...training, given: id })
      : hearAgain(sounds, outcomeOf(question, id, given));
  useLetters((key) => {
    const version = versionOf(key);
    if (version !== undefined) sounds.asked.hear(version);
    const choice = question.choices[Number(key) - 1];
    if (choice !== undefined) press(choice.id);
  });
  return (
    <div class="asked">
      <Played held={held} sounds={sounds} named={given !== undefined} />
      {!held.page.sounded && <OwnCautions />}
      <Choices
        round={round}
        question={question}
        given={given}
        heard={heardOf(sounds, question, given)}
        press={press}
      />
      {taken && <Outcome round={round} question={question} taken={taken} next={next} />}
      <TrainingScore
        round={round}
        answered={answered}
        nameOf={(one) => nameOf(words, round, one)}
      />
      <Level held={held} />
    </div>
  );
}

function hearAgain({ asked, mistaken }: QuestionSounds, outcome: ReturnType<typeof outcomeOf>) {
  if (outcome === "right-one") asked.hear("faulty");
  if (outcome === "wrong-one") mistaken.hear("faulty");
}

/** The choice that is heard, by id. */
function heardOf({ heard }: QuestionSounds, { right }: Question, given: string | undefined) {
  if (heard?.[1] !== "faulty") return undefined;
  return heard[0] === "asked" ? right : given;
}

interface PlayedProps {
  readonly held: Held;
  readonly sounds: QuestionSounds;
  readonly named: boolean;
}

/** The healthy feed and what is asked. While what it was taken for plays, neither of the two is said to be heard. */
function Played({ held, sounds: { asked, mistaken, heard }, named }: PlayedProps) {
  const { listening, training: words } = useWords();
  const other = heard?.[0] === "mistaken";
  return (
    <TwoVersions
      held={other ? { ...held, world: { ...held.world, heard: undefined } } : held}
      sound={{
        hear: asked.hear,
        progress: asked.progress ?? mistaken.progress,
        refused: asked.refused || mistaken.refused,
        stop: () => {
          asked.stop();
          mistaken.stop();
        },
      }}
      names={{ healthy: listening.healthy, faulty: named ? words.whatWas : words.whatIsIt }}
    />
  );
}

interface OutcomeProps {
  readonly round: Round;
  readonly question: Question;
  readonly taken: Sounding;
  readonly next: () => void;
}

/** Right or wrong, what it was, and the press that goes on. */
function Outcome({ round, question, taken, next }: OutcomeProps) {
  const words = useWords();
  const { training: said, language } = words;
  const right = question.choices.find(({ id }) => id === question.right);
  if (right === undefined) return null;
  const name = nameOf(words, round, right);
  const text = taken.id === right.id ? said.right(name) : said.wrong(name);
  return (
    <div class="outcome">
      <p class="fault-said" role="status">
        {[text, sentence(language.effects[right.effect]), said.listenAgain].join(" ")}
      </p>
      <Next onPress={next} />
    </div>
  );
}

/** It has the focus when it comes: one Enter goes on. */
function Next({ onPress }: { readonly onPress: () => void }) {
  const { training: words } = useWords();
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <button type="button" class="main" onClick={onPress} ref={button}>
      {words.next}
    </button>
  );
}

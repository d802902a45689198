import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { earsAt } from "#core/rig/ears-at.ts";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { answer, type Question, questionAfter, type Round, roundAt } from "#core/training/round.ts";
import type { Sounding } from "#core/training/soundings.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { useLetters } from "#ui/parts/keys.ts";
import { capital, sentence } from "#ui/parts/phrases.ts";
import { OwnCautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import type { View } from "./page.ts";
import { testProgramme } from "./test-programme.ts";
import { TrainingScore } from "./training-score.tsx";
import { TwoVersions, versionOf } from "./two-versions.tsx";
import { useAudition } from "./use-audition.ts";
import type { Held } from "./use-page.ts";

type TrainingView = Extract<View, { screen: "training" }>;

interface Props {
  readonly held: Held;
  readonly view: TrainingView;
}

/** One fault after another, to be named by ear. The round is worked out once the screen stands. */
export function Training({ held, view }: Props) {
  const [round, setRound] = useState<Round>();
  useEffect(() => {
    const soon = setTimeout(() => {
      const rig = build(fromHeadphoneSocket("one seat", ["you"]));
      setRound(roundAt(rig, "position 1", view.seed));
    });
    return () => clearTimeout(soon);
  }, [view.seed]);
  return (
    <section class="training">
      <Heading>Name the fault you hear</Heading>
      {round ? <Asked held={held} view={view} round={round} /> : <p>It is being made up.</p>}
    </section>
  );
}

/** What a choice is called: its likeliest fault, as it stands inside a sentence. */
const nameOf = ({ rig }: Round, { faults: [fault] }: Sounding): string =>
  faultText(english, rig, fault);

function Asked({ held, view, round }: Props & { readonly round: Round }) {
  const { answered, given } = view;
  const question = useMemo(() => questionAfter(round, answered), [round, answered]);
  const taken = question.choices.find(({ id }) => id === given);
  const go = (next: Partial<TrainingView>) =>
    held.change((page) =>
      page.view.screen === "training" ? { ...page, view: { ...page.view, ...next } } : page,
    );
  const sound = useAudition(held, {
    key: `${view.seed} ${question.number}`,
    programme: () => testProgramme(held.edges.player.rate(), question.number),
    chains: () => ({
      healthy: earsAt(round.rig, round.position, []),
      faulty: earsAt(round.rig, round.position, [question.fault]),
    }),
  });
  const next = () => {
    if (given !== undefined)
      go({ answered: [...answered, answer(question, given)], given: undefined });
  };
  const choose = (id: string) => given === undefined && go({ given: id });
  useLetters((key) => {
    const version = versionOf(key);
    if (version !== undefined) sound.hear(version);
    const choice = question.choices[Number(key) - 1];
    if (choice !== undefined) choose(choice.id);
  });
  return (
    <div class="asked">
      <TwoVersions
        held={held}
        sound={sound}
        names={{ healthy: "healthy", faulty: "what is it?" }}
      />
      {!held.page.sounded && <OwnCautions />}
      <Choices round={round} question={question} given={given} choose={choose} />
      {taken && <Outcome round={round} question={question} taken={taken} next={next} />}
      <TrainingScore round={round} answered={answered} nameOf={(one) => nameOf(round, one)} />
      <Level held={held} />
    </div>
  );
}

interface ChoicesProps {
  readonly round: Round;
  readonly question: Question;
  readonly given: string | undefined;
  readonly choose: (id: string) => void;
}

/** Up to four things it may be, drawn and said; once one is taken, which was right. */
function Choices({ round, question, given, choose }: ChoicesProps) {
  return (
    <ol class="soundings choices">
      {question.choices.map((choice, index) => (
        <li key={choice.id}>
          <button
            type="button"
            class={given === undefined ? "" : outcomeOf(question, choice, given)}
            aria-pressed={given === choice.id}
            aria-disabled={given !== undefined}
            aria-keyshortcuts={String(index + 1)}
            onClick={() => choose(choice.id)}
          >
            <EffectGlyph effect={choice.effect} />
            <span>
              <span class="key" aria-hidden="true">
                {index + 1}
              </span>{" "}
              {capital(nameOf(round, choice))}
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
}

function outcomeOf({ right }: Question, { id }: Sounding, given: string): string {
  if (id === right) return "right-one";
  return id === given ? "wrong-one" : "";
}

interface OutcomeProps {
  readonly round: Round;
  readonly question: Question;
  readonly taken: Sounding;
  readonly next: () => void;
}

/** Right or wrong, what it was, and the press that goes on. */
function Outcome({ round, question, taken, next }: OutcomeProps) {
  const right = question.choices.find(({ id }) => id === question.right);
  if (right === undefined) return null;
  const text =
    taken.id === right.id
      ? `Right: ${nameOf(round, right)}.`
      : `No, it was this: ${nameOf(round, right)}.`;
  return (
    <div class="outcome">
      <p class="fault-said" role="status">
        {text} {sentence(english.effects[right.effect])} Listen again if you like.
      </p>
      <Next onPress={next} />
    </div>
  );
}

/** It has the focus when it comes: one Enter goes on. */
function Next({ onPress }: { readonly onPress: () => void }) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <button type="button" class="main" onClick={onPress} ref={button}>
      the next one
    </button>
  );
}

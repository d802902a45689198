import { capital } from "#core/report/phrases.ts";
import type { Question, Round } from "#core/training/round.ts";
import type { Sounding } from "#core/training/soundings.ts";
import { faultText } from "#core/words/fault-text.ts";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";

/** What a choice is called: its likeliest fault, as it stands inside a sentence. */
export const nameOf = (
  { language }: Words,
  { rig }: Round,
  { faults: [fault] }: Sounding,
): string => faultText(language, rig, fault);

/** What became of a choice once one was taken. */
type Outcome = "right-one" | "wrong-one" | "other-one";

export function outcomeOf({ right }: Question, id: string, given: string): Outcome {
  if (id === right) return "right-one";
  return id === given ? "wrong-one" : "other-one";
}

interface Props {
  readonly round: Round;
  readonly question: Question;
  readonly given: string | undefined;
  /** The choice that is heard now, by id. Not to be told before one is taken. */
  readonly heard: string | undefined;
  readonly press: (id: string) => void;
}

/** Up to four things it may be, drawn and said; once one is taken, what was played and what it was taken for, to be heard again. */
export function Choices({ round, question, given, heard, press }: Props) {
  const words = useWords();
  return (
    <ol class="soundings choices">
      {question.choices.map((choice, index) => {
        const outcome = given === undefined ? undefined : outcomeOf(question, choice.id, given);
        return (
          <li key={choice.id}>
            <button
              type="button"
              class={outcome ?? ""}
              aria-disabled={outcome === "other-one"}
              aria-keyshortcuts={String(index + 1)}
              onClick={() => press(choice.id)}
            >
              <EffectGlyph effect={choice.effect} />
              <span>
                <span class="key" aria-hidden="true">
                  {index + 1}
                </span>{" "}
                {capital(nameOf(words, round, choice))}
                {outcome && <Said outcome={outcome} heard={heard === choice.id} />}
              </span>
            </button>
          </li>
        );
      })}
    </ol>
  );
}

function Said({ outcome, heard }: { readonly outcome: Outcome; readonly heard: boolean }) {
  const { wasThis, tookThis } = useWords().training;
  if (outcome === "other-one") return null;
  const said = outcome === "right-one" ? wasThis : tookThis;
  return <small class={heard ? "heard" : ""}>{heard ? said.heard : said.again}</small>;
}

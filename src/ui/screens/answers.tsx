import { useState } from "preact/hooks";
import type { EarCheckName, Question } from "#core/checks/check.ts";
import { answerText } from "#core/words/answer-text.ts";
import { HeadPad } from "#ui/parts/head-pad.tsx";
import { cupSpots, earSpots } from "#ui/parts/head-places.ts";
import { useWords } from "#ui/words/use-words.ts";
import { PlaySign } from "./play.tsx";

interface Props {
  readonly check: EarCheckName;
  readonly question: Question;
  readonly facing: boolean;
  /** The letters on the cups stand the other way round. */
  readonly exchanged: boolean;
  /** Whether it was said to come and go. */
  readonly changes: boolean;
  /** Says that it comes and goes, or takes that back; left out where it was said for good. */
  readonly onChanges: (() => void) | undefined;
  readonly onAnswer: (given: readonly string[]) => void;
  readonly onAgain: () => void;
}

/** The closed list of a question: places on the head, and beneath it what has no place. */
export function Answers({
  check,
  question,
  facing,
  exchanged,
  onAnswer,
  onAgain,
  changes,
  onChanges,
}: Props) {
  const { language, sounding, asking } = useWords();
  const [faint, setFaint] = useState(false);
  const point = (place: string) => onAnswer([faint ? `faint, ${place}` : place]);
  const placeless = withoutPlace(check, question);
  return (
    <>
      <div class="sounding">
        <HeadPad
          spots={spotsFor(check, exchanged)}
          facing={facing}
          labelledBy="question"
          onPoint={point}
        />
        <button type="button" class="play again" onClick={onAgain}>
          <PlaySign />
          {sounding.again}
        </button>
      </div>
      <div class="says">
        {question.answers.includes("faint, middle") && (
          <button type="button" class="say" aria-pressed={faint} onClick={() => setFaint(!faint)}>
            {asking.faint}
          </button>
        )}
        {onChanges && (
          <button type="button" class="say" aria-pressed={changes} onClick={onChanges}>
            {asking.changes}
          </button>
        )}
        {placeless.map((answer) => (
          <button key={answer} type="button" class="say" onClick={() => onAnswer([answer])}>
            {check === "silence" && answer === "nothing"
              ? asking.silent
              : answerText(language, answer)}
          </button>
        ))}
        <button type="button" class="say" onClick={() => onAnswer(question.answers)}>
          {asking.cannotTell}
        </button>
      </div>
    </>
  );
}

function spotsFor(check: EarCheckName, exchanged: boolean) {
  if (check === "silence") return [];
  return check === "cup" ? cupSpots(exchanged) : earSpots;
}

/** The answers that are not on the head. */
function withoutPlace(check: EarCheckName, { answers }: Question): readonly string[] {
  const onHead = new Set<string>(spotsFor(check, false).map(({ answer }) => answer));
  return answers.filter((answer) => !onHead.has(answer) && !answer.startsWith("faint, "));
}

import { useRef, useState } from "preact/hooks";
import type { EarCheckName, Question } from "#core/checks/check.ts";
import { answerText } from "#core/words/answer-text.ts";
import { byDigit, Digit, useDigits } from "#ui/parts/digits.tsx";
import { HeadPad } from "#ui/parts/head-pad.tsx";
import { cupSpots, earSpots } from "#ui/parts/head-places.ts";
import { useWords } from "#ui/words/use-words.ts";
import { PlaySign } from "./play.tsx";

interface Props {
  readonly check: EarCheckName;
  readonly question: Question;
  readonly facing: boolean;
  /** Another question was answered a moment ago. */
  readonly follows: boolean;
  /** The letters on the cups stand the other way round. */
  readonly exchanged: boolean;
  /** Whether it was said to come and go. */
  readonly changes: boolean;
  /** Says that it comes and goes, or takes that back; left out where it was said for good. */
  readonly onChanges: (() => void) | undefined;
  readonly onAnswer: (given: readonly string[]) => void;
  readonly onAgain: () => void;
}

/** The closed list of a question: places on the head, and beneath it what has no place. A number key presses each. */
export function Answers({ check, question, facing, exchanged, follows, ...on }: Props) {
  const { onAnswer, onAgain, ...says } = on;
  const { sounding } = useWords();
  const [faint, setFaint] = useState(false);
  const all = useRef<HTMLDivElement>(null);
  useDigits(all);
  const point = (place: string) => onAnswer([faint ? `faint, ${place}` : place]);
  const spots = spotsFor(check, exchanged);
  return (
    <div class={follows ? "answers follows" : "answers"} ref={all}>
      <div class="sounding">
        <HeadPad spots={spots} facing={facing} labelledBy="question" onPoint={point} />
        <button type="button" class="play again" onClick={onAgain}>
          <PlaySign />
          {sounding.again}
        </button>
      </div>
      <Says
        {...{ check, question, onAnswer, faint, ...says }}
        after={spots.length}
        onFaint={() => setFaint(!faint)}
      />
    </div>
  );
}

type SaysProps = Pick<Props, "check" | "question" | "changes" | "onChanges" | "onAnswer"> & {
  readonly faint: boolean;
  readonly onFaint: () => void;
  /** How many places on the head have a number before them. */
  readonly after: number;
};

/** What has no place on the head. */
function Says({ check, question, changes, onChanges, onAnswer, faint, onFaint, after }: SaysProps) {
  const { language, asking } = useWords();
  const canBeFaint = question.answers.includes("faint, middle");
  const says: readonly Saying[] = [
    ...(canBeFaint ? [{ words: asking.faint, pressed: faint, onPress: onFaint }] : []),
    ...(onChanges ? [{ words: asking.changes, pressed: changes, onPress: onChanges }] : []),
    ...withoutPlace(check, question).map((answer) => ({
      words:
        check === "silence" && answer === "nothing" ? asking.silent : answerText(language, answer),
      onPress: () => onAnswer([answer]),
    })),
    { words: asking.cannotTell, onPress: () => onAnswer(question.answers) },
  ];
  return (
    <div class="says">
      {says.map(({ words, pressed, onPress }, at) => (
        <button
          key={words}
          type="button"
          class="say"
          aria-pressed={pressed}
          {...byDigit(after + at + 1)}
          onClick={onPress}
        >
          {words}
          <Digit place={after + at + 1} />
        </button>
      ))}
    </div>
  );
}

interface Saying {
  readonly words: string;
  readonly pressed?: boolean;
  readonly onPress: () => void;
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

import { surelyAnswered } from "#core/checks/cups-heard.ts";
import { type CupsTold, type CupTaken, cupsTold } from "#core/measurement/cups-told.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import { CupsPicture } from "#ui/parts/cups-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { BackToQuestion } from "./back-to-question.tsx";
import type { CupsOfPosition } from "./cup-measure.tsx";
import { cupsLines, cupsTitle, leftToEars } from "./cup-words.ts";
import { Heading } from "./frame.tsx";

interface Props {
  readonly left: CupTaken;
  readonly right: CupTaken;
  readonly at: CupsOfPosition | undefined;
  readonly onAnew: () => void;
}

/** Both cups: drawn, then said with their numbers; within a session they can be entered. */
export function CupResult({ left, right, at, onAnew }: Props) {
  const words = useWords();
  const told = cupsTold(left, right);
  if ("refused" in told)
    return (
      <>
        <Heading key="told">{words.cups.result.refused}</Heading>
        <p class="why-not" role="alert">
          {refusalText(words.language, told)}
        </p>
        <Foot told={undefined} at={at} onAnew={onAnew} />
      </>
    );
  const lines = cupsLines(words, told);
  return (
    <>
      <Heading key="told">{cupsTitle(words, told)}</Heading>
      <CupsPicture {...told} label={lines.join(" ")} />
      <ul class="measured-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Foot told={told} at={at} onAnew={onAnew} />
    </>
  );
}

interface FootProps extends Pick<Props, "at" | "onAnew"> {
  readonly told: CupsTold | undefined;
}

function Foot({ told, at, onAnew }: FootProps) {
  const words = useWords();
  const { nothingHeard, enter, both } = words.cups.result;
  const heard = told?.cups.some(({ carries }) => carries !== "neither") ?? false;
  const answered = at && told && heard ? surelyAnswered(at.position, told.possible) : [];
  const open = answered.length > 0 ? leftToEars(words, answered) : undefined;
  return (
    <>
      {told && !heard && <p class="hint">{nothingHeard}</p>}
      {open && <p class="hint">{open}</p>}
      <div class="foot">
        {at && answered.length > 0 && (
          <button type="button" class="main" onClick={() => at.onEnter(answered)}>
            {enter}
          </button>
        )}
        <button type="button" class={answered.length > 0 ? "quiet" : "main"} onClick={onAnew}>
          {both}
        </button>
        <BackToQuestion at={at} />
      </div>
    </>
  );
}

import { surelyAnswered } from "#core/checks/cups-heard.ts";
import { type CupsTold, type CupTaken, cupsTold } from "#core/measurement/cups-told.ts";
import { english } from "#core/words/english.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import { CupsPicture } from "#ui/parts/cups-picture.tsx";
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
  const told = cupsTold(left, right);
  if ("refused" in told)
    return (
      <>
        <Heading key="told">It cannot be judged so</Heading>
        <p class="why-not" role="alert">
          {refusalText(english, told)}
        </p>
        <Foot told={undefined} at={at} onAnew={onAnew} />
      </>
    );
  const lines = cupsLines(told);
  return (
    <>
      <Heading key="told">{cupsTitle(told)}</Heading>
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

const nothingHeard =
  "A microphone that hears nothing proves nothing: see that it is the right one and the right output, that nothing is turned down, and listen again.";

interface FootProps extends Pick<Props, "at" | "onAnew"> {
  readonly told: CupsTold | undefined;
}

function Foot({ told, at, onAnew }: FootProps) {
  const heard = told?.cups.some(({ carries }) => carries !== "neither") ?? false;
  const answered = at && told && heard ? surelyAnswered(at.position, told.possible) : [];
  const open = answered.length > 0 ? leftToEars(answered) : undefined;
  return (
    <>
      {told && !heard && <p class="hint">{nothingHeard}</p>}
      {open && <p class="hint">{open}</p>}
      <div class="foot">
        {at && answered.length > 0 && (
          <button type="button" class="main" onClick={() => at.onEnter(answered)}>
            Enter what it heard
          </button>
        )}
        <button type="button" class={answered.length > 0 ? "quiet" : "main"} onClick={onAnew}>
          Listen to both again
        </button>
        <BackToQuestion at={at} />
      </div>
    </>
  );
}

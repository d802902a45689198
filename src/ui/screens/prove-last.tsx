import { isReading } from "#core/checks/finding.ts";
import { lastToTake } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import { LastAnswer } from "./last-answer.tsx";
import { contactWords, shownWords } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";

/** The last reading or answer, and a way to take it back. */
export function LastReading({ held, spelled }: Pick<AtProving, "held" | "spelled">) {
  const words = useWords();
  const { meter } = words.prove;
  const last = lastToTake(held.page.log);
  if (last?.entry !== "finding" || !isReading(last.finding)) return <LastAnswer held={held} />;
  const { asked, ohms, bent } = last.finding;
  const told = meter.last(
    contactWords(words, spelled, asked.from),
    contactWords(words, spelled, asked.to),
    shownWords(words, ohms, bent),
  );
  return (
    <p class="last">
      <span>{told}</span>
      <button type="button" class="quiet" onClick={held.takeBack}>
        {meter.takeBack}
      </button>
    </p>
  );
}

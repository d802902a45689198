import { isReading } from "#core/checks/finding.ts";
import { capital } from "#core/report/phrases.ts";
import { lastToTake } from "#core/session/log.ts";
import { LastAnswer } from "./last-answer.tsx";
import { contactWords, shownWords } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";

/** The last reading or answer, and a way to take it back. */
export function LastReading({ held, spelled }: Pick<AtProving, "held" | "spelled">) {
  const last = lastToTake(held.page.log);
  if (last?.entry !== "finding" || !isReading(last.finding)) return <LastAnswer held={held} />;
  const { asked, ohms, bent } = last.finding;
  const [from, to] = [asked.from, asked.to].map((node) => contactWords(spelled, node));
  return (
    <p class="last">
      <span>{`${capital(`${from} and ${to}`)}: ${shownWords(ohms, bent)}.`}</span>
      <button type="button" class="quiet" onClick={held.takeBack}>
        take the last reading back
      </button>
    </p>
  );
}

import { toldWords } from "#core/report/told.ts";
import { lastToTake } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Session } from "./use-session.ts";

/** What was said last, and a way to take it back. */
export function LastAnswer({ held: { page, ready, takeBack } }: { readonly held: Session }) {
  const { language, doing } = useWords();
  const last = lastToTake(page.log);
  if (last === undefined || ready === undefined) return null;
  return (
    <p class="last">
      <span>{toldWords(language, ready.derived.model, last, page.log)}</span>
      <button type="button" class="quiet" onClick={takeBack}>
        {doing.takeBack}
      </button>
    </p>
  );
}

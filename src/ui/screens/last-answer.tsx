import { toldWords } from "#core/report/told.ts";
import { lastToTake } from "#core/session/log.ts";
import type { Session } from "./use-session.ts";

/** What was said last, and a way to take it back. */
export function LastAnswer({ held: { page, ready, takeBack } }: { readonly held: Session }) {
  const last = lastToTake(page.log);
  if (last === undefined || ready === undefined) return null;
  return (
    <p class="last">
      <span>{toldWords(ready.derived.model, last)}</span>
      <button type="button" class="quiet" onClick={takeBack}>
        take the last answer back
      </button>
    </p>
  );
}

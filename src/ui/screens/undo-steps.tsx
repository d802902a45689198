import { type Log, lastDrawing, lastUndone } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

interface Props {
  readonly log: Log;
  readonly step: (way: "undone" | "redone") => void;
}

/** The last edit of the drawing taken back, and what was taken back put in again: by buttons, or by the usual keys. At its end a button keeps the focus. */
export function UndoSteps({ log, step }: Props) {
  const { rig: words } = useWords();
  useUndoKeys(step);
  const none = { undone: lastDrawing(log) === undefined, redone: lastUndone(log) === undefined };
  const press = (way: "undone" | "redone") => none[way] || step(way);
  return (
    <p class="steps">
      <button
        type="button"
        class="say"
        aria-keyshortcuts="Control+Z"
        aria-disabled={none.undone}
        onClick={() => press("undone")}
      >
        {words.undo}
      </button>
      <button
        type="button"
        class="say"
        aria-keyshortcuts="Control+Shift+Z"
        aria-disabled={none.redone}
        onClick={() => press("redone")}
      >
        {words.redo}
      </button>
    </p>
  );
}

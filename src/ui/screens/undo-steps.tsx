import { type Log, lastDrawing, lastUndone } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

interface Props {
  readonly log: Log;
  readonly step: (way: "undone" | "redone") => void;
}

/** The last edit of the drawing taken back, and what was taken back put in again: by buttons, or by the usual keys. */
export function UndoSteps({ log, step }: Props) {
  const { rig: words } = useWords();
  useUndoKeys(step);
  return (
    <p class="steps">
      <button
        type="button"
        class="say"
        aria-keyshortcuts="Control+Z"
        disabled={lastDrawing(log) === undefined}
        onClick={() => step("undone")}
      >
        {words.undo}
      </button>
      <button
        type="button"
        class="say"
        aria-keyshortcuts="Control+Shift+Z"
        disabled={lastUndone(log) === undefined}
        onClick={() => step("redone")}
      >
        {words.redo}
      </button>
    </p>
  );
}

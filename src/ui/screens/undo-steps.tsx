import { type Log, lastDrawing, lastUndone } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

interface Props {
  readonly log: Log;
  readonly step: (way: "undone" | "redone") => void;
}

const ways = {
  undone: { keys: "Control+Z", word: "undo", last: lastDrawing },
  redone: { keys: "Control+Shift+Z", word: "redo", last: lastUndone },
} as const;

/** The last edit of the drawing taken back, and what was taken back put in again: by buttons, or by the usual keys. At its end a button keeps the focus. */
export function UndoSteps({ log, step }: Props) {
  const { rig: words } = useWords();
  useUndoKeys(step);
  return (
    <p class="steps">
      {(["undone", "redone"] as const).map((way) => {
        const { keys, word, last } = ways[way];
        const none = last(log) === undefined;
        return (
          <button
            key={way}
            type="button"
            class="say"
            aria-keyshortcuts={keys}
            aria-disabled={none}
            onClick={() => none || step(way)}
          >
            {words[word]}
          </button>
        );
      })}
    </p>
  );
}

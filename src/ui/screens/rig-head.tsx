import { useLayoutEffect } from "preact/hooks";
import type { Refusal } from "#core/drawing/edited.ts";
import { lastDrawing, lastUndone, rigIn } from "#core/session/log.ts";
import { isWrittenIn } from "#ui/parts/keys.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { Page } from "./page.ts";

interface Props {
  readonly page: Page;
  readonly step: (way: "undone" | "redone") => void;
  readonly refused: Refusal | undefined;
}

/** What the screen is for, undo and redo, and why the last edit was not made. */
export function RigHead({ page, step, refused }: Props) {
  const { rig: words } = useWords();
  useUndoKeys(step);
  const did = page.view.screen === "rig" ? page.view.did : undefined;
  const rig = rigIn(page.log);
  return (
    <header class="rig-head">
      <div>
        <Heading>{words.heading}</Heading>
        <p class="sub">{`${rig?.name} · ${words.positions(rig?.positions.length ?? 0)}`}</p>
        <p class="note">{words.how}</p>
      </div>
      <p class="steps">
        <button
          type="button"
          class="say"
          aria-keyshortcuts="Control+Z"
          disabled={lastDrawing(page.log) === undefined}
          onClick={() => step("undone")}
        >
          {words.undo}
        </button>
        <button
          type="button"
          class="say"
          aria-keyshortcuts="Control+Shift+Z"
          disabled={lastUndone(page.log) === undefined}
          onClick={() => step("redone")}
        >
          {words.redo}
        </button>
      </p>
      <p class="hidden" role="status">
        {did && words[did]}
      </p>
      {refused && (
        <p class="refused rig-refused" role="alert">
          {words.refused(refused)}
        </p>
      )}
    </header>
  );
}

/** Ctrl+Z and Ctrl+Shift+Z, or with the Command key, but where somebody writes. */
function useUndoKeys(step: Props["step"]): void {
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent) => {
      const way = wayOf(event);
      if (way === undefined || isWrittenIn(event.target)) return;
      event.preventDefault();
      step(way);
    };
    window.addEventListener("keydown", down);
    return () => window.removeEventListener("keydown", down);
  }, [step]);
}

function wayOf({ key, ctrlKey, metaKey, shiftKey }: KeyboardEvent) {
  const letter = ctrlKey || metaKey ? key.toLowerCase() : "";
  if (letter === "y" || (letter === "z" && shiftKey)) return "redone";
  return letter === "z" ? "undone" : undefined;
}

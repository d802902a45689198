import type { Refusal } from "#core/drawing/edited.ts";
import { lastDrawing, lastUndone, rigIn } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { Page } from "./page.ts";
import { useUndoKeys } from "./use-undo-keys.ts";

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

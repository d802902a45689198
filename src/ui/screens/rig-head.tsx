import type { Refusal } from "#core/drawing/edited.ts";
import { rigIn } from "#core/session/log.ts";
import { useFirstWords, useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { Page } from "./page.ts";
import { UndoSteps } from "./undo-steps.tsx";

interface Props {
  readonly page: Page;
  readonly step: (way: "undone" | "redone") => void;
  readonly refused: Refusal | undefined;
}

/** What the screen is for, undo and redo, and why the last edit was not made. */
export function RigHead({ page, step, refused }: Props) {
  const { rig: words, language } = useWords();
  const { rigName } = useFirstWords().start;
  const { did, grown } = page.view.screen === "rig" ? page.view : {};
  const rig = rigIn(page.log);
  return (
    <header class="rig-head">
      <div>
        <Heading>{words.heading}</Heading>
        <p class="sub">
          {rig && `${rigName(rig.name)} · ${words.positions(rig.positions.length)}`}
        </p>
        <p class="note">{words.how}</p>
      </div>
      <UndoSteps log={page.log} step={step} />
      <p class={grown ? "rig-grown" : "hidden"} role="status">
        {did && words[did]}
        {grown &&
          words.grown(
            grown.part,
            grown.count,
            language.patching.parameters[grown.setting] ?? grown.setting,
          )}
      </p>
      {refused && (
        <p class="refused rig-refused" role="alert">
          {words.refused(refused)}
        </p>
      )}
    </header>
  );
}

import type { Words } from "#ui/words/use-words.ts";
import { HelpDrawing } from "./help-drawing.tsx";
import { helpName } from "./help-name.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly words: Words;
}

/** The question of the screen in hand, its answer and a drawing. */
export function HelpPanel({ held: { page, show }, words: { help } }: Props) {
  const name = helpName(page);
  const { question, answer } = help.screens[name];
  const { view } = page;
  return (
    <>
      <HelpDrawing name={name} />
      <div>
        <p class="help-question">{question}</p>
        <p>{answer}</p>
        {view.screen !== "words" && (
          <button type="button" class="quiet" onClick={() => show({ screen: "words", from: view })}>
            {help.toWords}
          </button>
        )}
      </div>
    </>
  );
}

import { useLetters } from "#ui/parts/keys.ts";
import { useFirstWords, type Words, WordsContext } from "#ui/words/use-words.ts";
import { useFetched } from "./use-fetched.ts";
import type { Held } from "./use-page.ts";
import { strips } from "./use-strip.ts";

interface ButtonProps {
  readonly open: boolean;
  readonly onPress: () => void;
}

/** One quiet button on every screen, and its key. */
export function HelpButton({ open, onPress }: ButtonProps) {
  const { whatIsThis } = useFirstWords();
  useLetters((key) => {
    if (key === "?") onPress();
  });
  return (
    <button
      type="button"
      class="quiet ask-help"
      aria-expanded={open}
      aria-controls={strips.help}
      aria-keyshortcuts="?"
      onClick={onPress}
    >
      <span class="mark" aria-hidden="true">
        ?
      </span>
      <span class="said">{whatIsThis}</span>
    </button>
  );
}

interface Props {
  readonly held: Held;
  readonly behind: Words | undefined;
}

/** The question of the screen in hand and its answer, under the bar that has the button; fetched when somebody asks. */
export function Help({ held, behind }: Props) {
  const panel = useFetched(true, () => import("./help-panel.tsx"), held.change);
  return (
    <div id={strips.help} class="help" role="status">
      {panel && behind && (
        <WordsContext.Provider value={behind}>
          <panel.HelpPanel held={held} words={behind} />
        </WordsContext.Provider>
      )}
    </div>
  );
}

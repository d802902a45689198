import type { Choice } from "#core/parts/kind.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Roving } from "./roving.tsx";

interface Props {
  readonly label: string;
  readonly choice: Choice;
  readonly value: number | string;
  readonly onChoose: (word: string) => void;
}

/** One of a few words that may be said of a part, entered as it is pressed. */
export function ChoiceField({ label, choice, value, onChoose }: Props) {
  const { choices } = useWords().language.patching;
  return (
    <div class="choice">
      <h2>{label}</h2>
      <Roving label={label} kind="words">
        {choice.choices.map((word) => (
          <button
            key={word}
            type="button"
            class="word"
            aria-pressed={word === value}
            onClick={() => onChoose(word)}
          >
            {choices[word] ?? word}
          </button>
        ))}
      </Roving>
    </div>
  );
}

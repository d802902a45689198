import { useId, useState } from "preact/hooks";
import type { Usual } from "#core/level/figures.ts";
import type { Typed } from "#core/level/typed.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";

interface Props {
  readonly label: string;
  /** How it may be written. */
  readonly hint: string;
  readonly unit: string;
  /** As it is told; nothing while nobody did. */
  readonly value: number | undefined;
  /** What is reckoned with meanwhile. */
  readonly usual: Usual | undefined;
  readonly least: number;
  readonly most: number;
  readonly read: (text: string) => Typed;
  /** Entered once the field is left or Enter pressed; nothing where it was emptied. */
  readonly onSet: (typed: Extract<Typed, { value: number }> | undefined) => void;
}

/** What stands in a field: as it is told, or as somebody writes it. */
interface Draft {
  readonly text: string;
  /** It was entered, and stays as it was written for as long as that holds. */
  readonly entered: boolean;
}

/** A number as a data sheet has it, or none. What is not understood is told in words and stays as it was written. */
export function NumberTyped(props: Props) {
  const { label, unit, value, usual, read, onSet } = props;
  const words = useWords();
  const id = useId();
  const [draft, setDraft] = useState<Draft>();
  const shown =
    draft && (!draft.entered || numberIn(read, draft.text) === value) ? draft : undefined;
  const typed = shown && readIn(read, shown.text);
  const wrong = typed !== undefined && "wrong" in typed;
  const enter = () => {
    if (shown === undefined || shown.entered || wrong) return;
    setDraft({ ...shown, entered: true });
    onSet(typed);
  };
  return (
    <div class="quantity level-number">
      <label for={id}>{label}</label>
      <span class="number-in">
        <input
          id={id}
          autocomplete="off"
          spellcheck={false}
          placeholder={usual && words.figures.plain(usual.typical)}
          value={shown?.text ?? (value === undefined ? "" : words.figures.plain(value))}
          aria-invalid={wrong}
          aria-describedby={`${id}-said`}
          onInput={({ currentTarget }) => setDraft({ text: currentTarget.value, entered: false })}
          onChange={enter}
          onKeyDown={({ key }) => key === "Enter" && enter()}
        />
        <span class="unit">{unit}</span>
      </span>
      <p class={wrong ? "refused" : "note"} id={`${id}-said`} aria-live="polite">
        {wordsOf(words, props, shown?.text, typed)}
      </p>
    </div>
  );
}

/** An emptied field says nothing. */
const readIn = (read: Props["read"], text: string): Typed | undefined =>
  text.trim() === "" ? undefined : read(text);

function numberIn(read: Props["read"], text: string): number | undefined {
  const typed = readIn(read, text);
  return typed && "value" in typed ? typed.value : undefined;
}

/** More than a number: a unit stands behind it. */
const hasUnit = (text: string): boolean => /[^\d.,\s+−-]/.test(text);

/** What is wrong with it, what it comes to, or what is usual. */
function wordsOf(
  { levelNumbers: words, figures }: Words,
  { unit, usual, hint, least, most }: Props,
  text = "",
  typed?: Typed,
): string {
  const { plain } = figures;
  if (typed && "wrong" in typed) {
    if (typed.wrong === "not understood") return words.notUnderstood(text, hint);
    return words.cannotBe(`${plain(typed.is)} ${unit}`, plain(least), `${plain(most)} ${unit}`);
  }
  if (typed && hasUnit(text)) return words.thatIs(`${plain(typed.value)} ${typed.unit ?? unit}`);
  if (usual === undefined) return hint;
  const { typical, low, high } = usual;
  return `${words.usual(plain(typical), plain(low), plain(high), unit)} ${hint}`;
}

import { useId, useState } from "preact/hooks";
import type { Quantity } from "#core/parts/kind.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";

interface Props {
  readonly label: string;
  readonly quantity: Quantity;
  readonly value: number;
  /** What stands in the field after each letter; nothing where that is not understood. */
  readonly onType: (value: number | undefined) => void;
}

/** Farads are said in billionths of a thousandth: pF; other units as they are. */
const scaleOf = ({ unit }: Quantity): number => (unit === "F" ? 1e12 : 1);

/** As it is written, with its unit. */
function withUnit({ figures, language }: Words, { unit }: Quantity, scaled: number): string {
  const named = unitOf(language, unit);
  return `${figures.plain(scaled)}${named && ` ${named}`}`;
}

const unitOf = ({ patching }: Words["language"], unit: Quantity["unit"]): string =>
  unit === "F" ? "pF" : patching.units[unit];

/** A number with its unit and what is usual. What is not understood is refused in words, stays written, and changes nothing. */
export function QuantityField({ label, quantity, value, onType }: Props) {
  const words = useWords();
  const id = useId();
  const scale = scaleOf(quantity);
  const [text, setText] = useState(words.figures.plain(value * scale));
  const read = readIn(text, quantity);
  const unit = unitOf(words.language, quantity.unit);
  const { refused, usual } = words.planFacts.quantity;
  const full = (one: number) => withUnit(words, quantity, one * scale);
  const type = (typed: string) => {
    setText(typed);
    onType(readIn(typed, quantity));
  };
  return (
    <div class="quantity">
      <label for={id}>{label}</label>
      <span class="number-in">
        <input
          id={id}
          inputMode="decimal"
          autocomplete="off"
          value={text}
          aria-invalid={read === undefined}
          aria-describedby={`${id}-said`}
          onInput={({ currentTarget }) => type(currentTarget.value)}
        />
        {unit && <span class="unit">{unit}</span>}
      </span>
      <p class={read === undefined ? "refused" : "note"} id={`${id}-said`} aria-live="polite">
        {read === undefined
          ? refused(
              text,
              words.figures.plain(quantity.least * scale),
              full(quantity.most),
              full(value),
            )
          : usual(full(quantity.typical))}
      </p>
    </div>
  );
}

const whole: readonly Quantity["unit"][] = ["outputs", "sets", "AWG"];

/** A number that its part understands, or nothing. A comma may stand for the point. */
function readIn(text: string, quantity: Quantity): number | undefined {
  const { least, most, unit } = quantity;
  if (!/^\s*[+-]?(\d+([.,]\d*)?|[.,]\d+)(e-?\d+)?\s*$/i.test(text)) return undefined;
  const number = Number(text.replace(",", ".")) / scaleOf(quantity);
  if (number < least || number > most) return undefined;
  return whole.includes(unit) && !Number.isInteger(number) ? undefined : number;
}

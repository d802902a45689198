import { useId, useState } from "preact/hooks";
import type { Quantity } from "#core/parts/kind.ts";
import { english } from "#core/words/english.ts";

interface Props {
  readonly label: string;
  readonly quantity: Quantity;
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** Farads are said in billionths of a thousandth: pF; other units as they are. */
const scaleOf = ({ unit }: Quantity): number => (unit === "F" ? 1e12 : 1);
const unitOf = ({ unit }: Quantity): string => (unit === "F" ? "pF" : english.patching.units[unit]);

/** A number as people write it: no more than four figures. */
const written = (value: number): string => String(Number(value.toPrecision(4)));

/** A number with its unit and what is usual. What is not understood is refused in words, stays written, and changes nothing. */
export function QuantityField({ label, quantity, value, onChange }: Props) {
  const id = useId();
  const scale = scaleOf(quantity);
  const [text, setText] = useState(written(value * scale));
  const read = readIn(text, quantity);
  const unit = unitOf(quantity);
  const type = (typed: string) => {
    setText(typed);
    const number = readIn(typed, quantity);
    if (number !== undefined && number !== value) onChange(number);
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
          ? `'${text}' is not understood: a number from ${written(quantity.least * scale)} to ${written(quantity.most * scale)}${unit && ` ${unit}`}. It stays at ${written(value * scale)}${unit && ` ${unit}`}.`
          : `usual: ${written(quantity.typical * scale)}${unit && ` ${unit}`}`}
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

import type { Decibels, DecibelsFullScale } from "#core/units/units.ts";
import type { Tongue } from "#storage/settings.ts";

/** Numbers as they are written in a language, with the minus that a minus is. */
export interface Figures {
  /** With one place. */
  readonly decibels: (value: Decibels) => string;
  readonly level: (value: DecibelsFullScale) => string;
  readonly number: (value: number, places: number) => string;
  readonly date: (at: number) => string;
  readonly time: (at: number) => string;
}

export function figuresIn(tongue: Tongue): Figures {
  const number = (value: number, places: number) => {
    const digits = { minimumFractionDigits: places, maximumFractionDigits: places };
    const text = new Intl.NumberFormat(tongue, { ...digits, signDisplay: "negative" }).format(
      value,
    );
    return text.replace("-", "−");
  };
  const when = (form: Intl.DateTimeFormatOptions) => (at: number) =>
    new Intl.DateTimeFormat(tongue, form).format(at);
  return {
    number,
    decibels: (value) => `${number(value, 1)} dB`,
    level: (value) => `${number(value, 0)} dBFS`,
    date: when({ dateStyle: "full" }),
    time: when({ timeStyle: "short" }),
  };
}

import type { Decibels, Ohms, Volts } from "#core/units/units.ts";
import { bounds, type FigureName } from "./figures.ts";
import type { SensitivityUnit } from "./sensitivity.ts";
import { isFigure } from "./told.ts";
import { fromDbu, fromDbv, voltsFor } from "./volts.ts";

/** A number as it was typed from a data sheet, in the unit that it is kept in; or why it is none. */
export type Typed =
  | { readonly value: number; readonly unit?: SensitivityUnit }
  | { readonly wrong: "not understood" }
  | { readonly wrong: "cannot be"; readonly is: number };

const notUnderstood: Typed = { wrong: "not understood" };

/** A number, with what stands behind it. A comma may stand for the point. */
function read(text: string): { readonly number: number; readonly rest: string } | undefined {
  const [, sign = "", digits, rest = ""] =
    /^\s*([+−-]?)\s*(\d+(?:[.,]\d*)?|[.,]\d+)(.*)$/s.exec(text) ?? [];
  if (digits === undefined) return undefined;
  const number = Number(digits.replace(",", ".")) * (sign === "−" || sign === "-" ? -1 : 1);
  return { number, rest: rest.replaceAll(/\s+/g, "").toLowerCase() };
}

/** What each unit of a sheet is in volts. */
const inVolts: Readonly<Record<string, (number: number) => Volts>> = {
  v: (number) => number,
  vrms: (number) => number,
  mv: (number) => number / 1000,
  µv: (number) => number / 1e6,
  μv: (number) => number / 1e6,
  uv: (number) => number / 1e6,
  dbu: (number: Decibels) => fromDbu(number),
  dbv: (number: Decibels) => fromDbv(number),
};

/** A power into so many ohms: 'mw', 'mwin32ω', 'w@250ohm', 'mw/32'. */
const power = /^(m?)w(?:(?:into|in|at|an|bei|@|\/)?(\d+(?:[.,]\d+)?)(?:ω|ohms?)?)?$/;

function voltsIn(number: number, rest: string, plain: string, ohms: Ohms): Volts | undefined {
  const unit = inVolts[rest === "" ? plain : rest];
  if (unit !== undefined) return unit(number);
  const [whole, milli, into] = power.exec(rest) ?? [];
  if (whole === undefined || number < 0) return undefined;
  const load = into === undefined ? ohms : Number(into.replace(",", "."));
  return load > 0 ? voltsFor(number * (milli === "m" ? 1 : 1000), load) : undefined;
}

const within = (name: FigureName, value: number): Typed =>
  isFigure(name, value) ? { value } : { wrong: "cannot be", is: value };

/**
 * A number of a box or of headphones as somebody typed it: '4', '1.2 V', '+18 dBu', '80 mW in 32 Ω' where volts are wanted, '−98 dBu' where noise is, '100 dB/mW'
 * where it is sensitivity. `ohms` is what hangs there where a power does not say of what.
 */
export function typedFigure(name: FigureName, text: string, ohms: Ohms): Typed {
  const typed = read(text);
  if (typed === undefined) return notUnderstood;
  const { number, rest } = typed;
  if (name === "sensitivity") return sensitivityIn(number, rest);
  const { unit } = bounds[name];
  if (unit === "dB") return rest === "" || rest === "db" ? within(name, number) : notUnderstood;
  const volts = voltsIn(number, rest, unit === "V" ? "v" : "µv", ohms);
  if (volts === undefined) return notUnderstood;
  return within(name, unit === "V" ? volts : volts * 1e6);
}

const perWhat: readonly (readonly [RegExp, SensitivityUnit])[] = [
  [/^(db)?(spl)?$/, "dB"],
  [/^(db)?(spl)?\/?1?mw$/, "dB/mW"],
  [/^(db)?(spl)?\/?1?v(rms)?$/, "dB/V"],
];

function sensitivityIn(number: number, rest: string): Typed {
  const unit = perWhat.find(([form]) => form.test(rest))?.[1];
  if (unit === undefined) return notUnderstood;
  const typed = within("sensitivity", number);
  return "value" in typed ? { ...typed, unit } : typed;
}

/** A resistance between what its kind understands. */
export function typedOhms(text: string, least: Ohms, most: Ohms): Typed {
  const typed = read(text);
  if (typed === undefined || !/^(ω|ohms?)?$/.test(typed.rest)) return notUnderstood;
  const { number } = typed;
  return number >= least && number <= most ? { value: number } : { wrong: "cannot be", is: number };
}

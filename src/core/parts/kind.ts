import { withTwins } from "./comes-and-goes.ts";
import type { Part } from "./part.ts";

/** What a part is for: how it is drawn, and where in a chain it may stand. */
const families = [
  "source",
  "lead",
  "adapter",
  "splitter",
  "amplifier",
  "headphones",
  "measuring",
  "person",
] as const;
export type Family = (typeof families)[number];

export type Unit = "Ω" | "F" | "m" | "AWG" | "outputs" | "sets" | "s" | "dB" | "times";

/** A number that may be said of a part: its unit, what is usual, and the bounds of what is understood. */
export interface Quantity {
  readonly unit: Unit;
  readonly typical: number;
  readonly least: number;
  readonly most: number;
}

/** One of a few words that may be said of a part. */
export interface Choice<Word extends string = string> {
  readonly choices: readonly Word[];
  readonly typical: Word;
}

export type Parameters = Readonly<Record<string, Quantity | Choice>>;

/** What is said of one part of a rig besides its kind. What is left out is typical; a name that its kind lacks is kept and not read. */
export type Settings = Readonly<Record<string, number | string>>;

type Values<P extends Parameters> = {
  readonly [Name in keyof P]: P[Name] extends Choice<infer Word> ? Word : number;
};

/** A kind of part: what may be said of one, and how it is made. */
export interface Kind {
  readonly family: Family;
  readonly parameters: Parameters;
  /** Throws, with what is understood, on a value that is not. */
  readonly make: (settings?: Settings) => Part;
}

/** A kind whose `make` gets every parameter, filled in and checked. */
export const kindOf = <const P extends Parameters>(
  family: Family,
  parameters: P,
  make: (values: Values<P>) => Part,
): Kind => ({
  family,
  parameters,
  make: remembered((settings) => withTwins(make(filled(parameters, settings) as Values<P>))),
});

/** Parts are values: what is made with the same settings is the same. So many are kept as a large rig has. */
function remembered(make: (settings: Settings) => Part): Kind["make"] {
  const known = new Map<string, Part>();
  return (settings = {}) => {
    const key = JSON.stringify(settings);
    const part = known.get(key) ?? make(settings);
    if (known.size >= mostKept) known.clear();
    known.set(key, part);
    return part;
  };
}

const mostKept = 200;

const filled = (parameters: Parameters, settings: Settings): Settings =>
  Object.fromEntries(
    Object.entries(parameters).map(([name, parameter]) => {
      const value = settings[name] ?? parameter.typical;
      const wrong =
        "choices" in parameter ? notChosen(parameter, value) : outside(parameter, value);
      if (wrong !== undefined) throw new RangeError(`${name}: ${value} is not ${wrong}`);
      return [name, value];
    }),
  );

const notChosen = ({ choices }: Choice, value: number | string): string | undefined =>
  choices.some((word) => word === value) ? undefined : `one of ${choices.join(", ")}`;

const outside = ({ least, most, unit }: Quantity, value: number | string): string | undefined =>
  typeof value === "number" &&
  value >= least &&
  value <= most &&
  (!counted(unit) || Number.isInteger(value))
    ? undefined
    : `a ${counted(unit) ? "whole number" : "number"} from ${least} to ${most} ${unit}`;

/** Whether a unit counts the sockets of a part. */
export const countsSockets = (unit: Unit): boolean => unit === "outputs" || unit === "sets";

const counted = (unit: Unit): boolean => countsSockets(unit) || unit === "AWG";

import type { Entry } from "#core/measurement/return.ts";
import type { MatrixTold, Taken } from "#core/proving/lead-matrix.ts";
import { type Effect, effectOf } from "#core/rig/effect.ts";
import type { Decibels } from "#core/units/units.ts";

/** One programme at one input, as it is shown. */
export interface ShownEntry {
  /** Against the healthy lead where there was one, else against the strongest there is. */
  readonly level: Decibels;
  readonly carried: boolean;
  readonly polarity: 1 | -1 | undefined;
}

/** `entries[input][programme]`. */
export type ShownEntries = readonly (readonly ShownEntry[])[];

/** Levels and polarity of all entries, against a healthy lead or against the strongest. */
export function shownEntries(taken: Taken, healthy: Taken | undefined): ShownEntries {
  const { entries } = taken.measured;
  const strongest = Math.max(...entries.flat().map(({ level }) => level));
  const louder = (taken.level ?? 0) - (healthy?.level ?? taken.level ?? 0);
  return entries.map((row, input) => {
    const own = healthy?.measured.entries[input]?.[input];
    return row.map((entry) => shownEntry(entry, own ? own.level + louder : strongest, own));
  });
}

const shownEntry = (
  { level, carried, polarity }: Entry,
  against: Decibels,
  own: Entry | undefined,
): ShownEntry => ({
  level: level - against,
  carried,
  polarity: polarity && own?.polarity === -1 ? (-polarity as 1 | -1) : polarity,
});

/** What the four gains do to the two sides. */
export function effectIn({ gains }: MatrixTold): Effect {
  const [ll, lr, rl, rr] = gains.map(([re, im]) => Math.sign(re) * Math.hypot(re, im));
  return effectOf([ll ?? 0, lr ?? 0, rl ?? 0, rr ?? 0]);
}

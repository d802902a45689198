import type { Decibels, Seconds } from "#core/units/units.ts";

/** A published rule: how long a level may last each day or week. */
export interface Rule {
  /** A-weighted, for the whole time. */
  readonly level: Decibels;
  readonly time: Seconds;
  /** So much louder is half of the time. */
  readonly exchange: Decibels;
}

const hour: Seconds = 3600;

/** NIOSH 98-126: 85 dBA for eight hours a day; WHO and ITU, H.870: 80 dBA, and 75 for children, for forty hours a week; OSHA, 29 CFR 1910.95: 90 dBA for eight hours. */
export const rules = {
  day: { level: 85, time: 8 * hour, exchange: 3 },
  week: { level: 80, time: 40 * hour, exchange: 3 },
  "children's week": { level: 75, time: 40 * hour, exchange: 3 },
  "at work in the United States": { level: 90, time: 8 * hour, exchange: 5 },
} as const satisfies Readonly<Record<string, Rule>>;
export type RuleName = keyof typeof rules;

/** How long a level may last by a rule that halves the time each `exchange` decibels. */
export const allowed = ({ level, time, exchange }: Rule, at: Decibels): Seconds =>
  time / 2 ** ((at - level) / exchange);

/** What part of a rule's time it is, one for all of it. */
export const doseOf = (rule: Rule, at: Decibels, lasting: Seconds): number =>
  lasting / allowed(rule, at);

/** The level that makes the same dose in a whole time: of OSHA's rule 16.61 lg D + 90 (1910.95, appendix A). */
export const averageOf = ({ level, exchange }: Rule, dose: number): Decibels =>
  level + exchange * Math.log2(dose);

/** Some sound that lasted. */
export interface Heard {
  readonly level: Decibels;
  readonly seconds: Seconds;
}

/** Doses add up. */
export const doseOfAll = (rule: Rule, all: readonly Heard[]): number =>
  all.reduce((sum, { level, seconds }) => sum + doseOf(rule, level, seconds), 0);

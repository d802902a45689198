import type { Probability } from "#core/units/units.ts";

/** How often somebody presses another answer than the one they mean (handbook, section 6; common practice, no source). */
export const slip: Probability = 0.05;

/** How often a look is noted down wrongly. Common practice, no source. */
export const lookSlip: Probability = 0.02;

/** For each answer meant, the chance that the one given is among `given`. */
export function meant(
  answers: readonly string[],
  given: readonly string[],
  slips: Probability,
): Float64Array {
  const among = new Set(given);
  const byChance = (slips * answers.filter((answer) => among.has(answer)).length) / answers.length;
  return Float64Array.from(answers, (answer) => (among.has(answer) ? 1 - slips : 0) + byChance);
}

/** The chance of each answer being given, from the chances of its being meant. */
export const given = (meanings: Float64Array, slips: Probability): Float64Array =>
  meanings.map((p) => (1 - slips) * p + slips / meanings.length);

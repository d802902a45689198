import { catalogue } from "#core/checks/catalogue.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Seconds } from "#core/units/units.ts";

/** Bits of some odds. */
export function entropyOf(odds: readonly number[]): number {
  const all = odds.reduce((sum, one) => sum + one, 0);
  return odds.reduce((sum, one) => sum - (one > 0 ? (one / all) * Math.log2(one / all) : 0), 0);
}

const rounds = 60;

/** The most bits that an answer can tell of what lies behind it, whatever the odds: the capacity of a channel (Blahut and Arimoto, 1972). */
export function capacityOf(rows: readonly Float64Array[]): number {
  let shares = rows.map(() => 1 / rows.length);
  let bits = 0;
  for (let round = 0; round < rounds; round++) {
    const mean = (rows[0] ?? new Float64Array()).map((_, at) =>
      rows.reduce((sum, row, one) => sum + (shares[one] ?? 0) * (row[at] ?? 0), 0),
    );
    const told = rows.map((row) =>
      row.reduce((sum, p, at) => sum + (p > 0 ? p * Math.log2(p / (mean[at] ?? 1)) : 0), 0),
    );
    bits = Math.max(...told);
    const next = shares.map((share, at) => share * 2 ** (told[at] ?? 0));
    const all = next.reduce((sum, one) => sum + one, 0);
    shares = next.map((share) => share / all);
  }
  return bits;
}

/** Each row once: what is answered alike tells nothing apart. */
const distinct = (rows: readonly Float64Array[]): readonly Float64Array[] => [
  ...new Map(rows.map((row) => [row.map((p) => Math.round(p * 1e6)).join(), row])).values(),
];

/**
 * Seconds that no policy can stay under on average to know the group of a fault for certain: the bits of the odds over groups at a position
 * where something is wrong, over the most bits a second that any check by ear or by eye there can tell. Checks elsewhere and repairs are
 * left out, which cure without telling; so it bounds finding, not mending.
 */
export function entropyBound({ model, groups, beliefs }: Derived, position: string): Seconds {
  const here = groups.filter(
    ({ inaudible, branch }) => !inaudible && branch.positions.includes(position),
  );
  const bits = entropyOf(
    here.map(({ faults }) => faults.reduce((sum, { weight }) => sum + weight, 0)),
  );
  const some = beliefs.together(position);
  const byEar = catalogue.map((check) => {
    const read = model.answers(check, position);
    return capacityOf(distinct(some.map(({ behaviour }) => read(behaviour)))) / check.seconds;
  });
  const looks = model.wayTo(position).flatMap((branch) => branch.looks);
  const byEye = looks.map((look) => {
    const rows = some.map(({ faults }) => predictLook(look, sightsOf(look, faults)));
    return capacityOf(distinct(rows)) / look.seconds;
  });
  return bits / Math.max(...byEar, ...byEye);
}

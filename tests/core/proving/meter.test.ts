import { describe, expect, test } from "vitest";
import { provable } from "#core/proving/ends.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import { isLoose, kindOfOhms, type MeterView, meterView } from "#core/proving/meter-view.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { seeded } from "#core/units/random.ts";
import { everyOther } from "#tests/support/long.ts";
import { derived, drawn, ownFaults, type Proved, prove } from "./prover.ts";

/** One row of what is printed: how many readings it took, against the least there can be. */
const rows: string[] = [];
let proved = 0;

/** Which of some faults a reading of two contacts would show. */
const shows = (view: MeterView, faults: readonly RigFault[]) =>
  view.pairs.map((pair) => {
    const [sound = 0] = view.shown([], pair);
    return faults.map((fault) => {
      const shown = view.shown([fault], pair);
      return isLoose(shown) || shown.some((one) => kindOfOhms(one) !== kindOfOhms(sound));
    });
  });

/** The fewest readings between which every fault shows, by trying all. */
function leastReadings(view: MeterView, faults: readonly RigFault[]): number {
  const seen = shows(view, faults).map((row) =>
    row.reduce((bits, shown, at) => (shown ? bits | (1n << BigInt(at)) : bits), 0n),
  );
  const every = seen.reduce((all, bits) => all | bits, 0n);
  const search = (left: bigint, depth: number): boolean => {
    if (left === 0n) return true;
    if (depth === 0) return false;
    const lowest = left & -left;
    return seen.some((bits) => (bits & lowest) !== 0n && search(left & ~bits, depth - 1));
  };
  for (let depth = 0; ; depth++) if (search(every, depth)) return depth;
}

/** Bits in which of several kinds of trouble it is, by their odds, where a healthy lead is not among them. */
function troubleBits(view: MeterView, faults: readonly RigFault[]): number {
  const odds = new Map<string, number>();
  for (const fault of faults) {
    const text = view.all([fault]);
    odds.set(text, (odds.get(text) ?? 0) + fault.weight);
  }
  const all = [...odds.values()].reduce((sum, weight) => sum + weight, 0);
  return [...odds.values()].reduce(
    (sum, weight) => sum - (weight / all) * Math.log2(weight / all),
    0,
  );
}

const isRight = ({ proof }: Proved, planted: readonly RigFault[], seen: boolean): boolean =>
  seen
    ? proof.state === "wrong" && planted.every((fault) => proof.alike.includes(fault))
    : proof.state === "healthy";

describe.each(provable)("%s", (kind) => {
  const log = drawn(leadRig({ kind, by: "meter" }));
  const all = derived(log);
  const view = meterView(all.model.rig);
  const faults = ownFaults(all);
  const visible = faults.filter((fault) => view.all([fault]) !== view.all([]));

  test("a healthy one is proved with as few readings as there can be, and no fewer", () => {
    const { proof, steps } = prove(log, "meter", [], seeded(1));
    expect(proof.state).toBe("healthy");
    const least = leastReadings(view, visible);
    expect(steps).toBeGreaterThanOrEqual(least);
    expect(steps).toBeLessThanOrEqual(least + 1);
    rows.push(
      `${kind.padEnd(45)} ${String(view.pairs.length).padStart(5)} ${String(least).padStart(6)} ${String(steps).padStart(7)}`,
    );
  });

  test("every fault is named, in the group that no reading tells apart", {
    timeout: 60_000,
  }, () => {
    const walks = everyOther(faults, 3).map((fault, at) => ({
      fault,
      proved: prove(log, "meter", [fault], seeded(at)),
    }));
    const missed = walks.filter(
      ({ fault, proved }) => !isRight(proved, [fault], visible.includes(fault)),
    );
    expect(missed.map(({ fault, proved }) => `${fault.id}: ${proved.proof.state}`)).toEqual([]);
    proved += walks.length;
    const steps = walks.map(({ proved }) => proved.steps);
    const mean = steps.reduce((sum, one) => sum + one, 0) / steps.length;
    const weight = walks.reduce((sum, { fault }) => sum + fault.weight, 0);
    const byOdds = walks.reduce((sum, { fault, proved }) => sum + fault.weight * proved.steps, 0);
    rows[rows.length - 1] +=
      `  ${String(walks.length).padStart(6)} ${mean.toFixed(2).padStart(6)} ${(byOdds / weight).toFixed(2).padStart(8)} ${String(Math.max(...steps)).padStart(5)} ${troubleBits(view, visible).toFixed(2).padStart(6)}`;
    expect(mean).toBeLessThan(view.pairs.length);
  });
});

test("readings, against all there are and the least there can be", () => {
  console.log(
    `${"".padEnd(45)} pairs  least  healthy faults   mean  by odds  most   bits\n${rows.join("\n")}\n${proved} faults of ${rows.length} leads and adapters`,
  );
  expect(rows).toHaveLength(provable.length);
});

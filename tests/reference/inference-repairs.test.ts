import { describe, expect, test } from "vitest";
import { plan } from "#core/inference/plan.ts";
import { expectedRepair, repairOrder } from "#core/inference/repair-order.ts";

/**
 * Expected cost of repair: the sum over the order of (1 − what came before) · cost of looking + p · cost of mending (Heckerman, Breese
 * and Rommelse, Communications of the ACM 38(3), 1995); best by p/c (Kadane and Simon, 1977). The numbers are computed (facts,
 * section 10). Repairs are counted from 0 here, from 1 in the facts.
 */
const cases = [
  {
    name: "three causes, mending 10 each",
    p: [0.5, 0.3, 0.2],
    seconds: [4, 1, 2],
    mending: 10,
    order: [1, 0, 2],
    best: 14.2,
    natural: 14.9,
    worst: 15.5,
  },
  {
    name: "four causes",
    p: [0.4, 0.3, 0.2, 0.1],
    seconds: [6, 2, 1, 3],
    mending: 0,
    order: [2, 1, 0, 3],
    best: 5.9,
    natural: undefined,
    worst: 9.6,
  },
] as const;

const orders = (some: readonly number[]): number[][] =>
  some.length === 0
    ? [[]]
    : some.flatMap((one) =>
        orders(some.filter((other) => other !== one)).map((rest) => [one, ...rest]),
      );

describe.for(cases)("$name", ({ p, seconds, mending, order, best, natural, worst }) => {
  const probabilities = Float64Array.from(p);
  const repairs = seconds.map((each, own) => ({
    seconds: each,
    mending,
    cures: Float64Array.from(p, (_, at) => Number(at === own)),
  }));
  const places = [...p.keys()];
  const costs = orders(places).map((one) => expectedRepair(probabilities, repairs, one));

  test("in order of p/c", () => {
    const found = repairOrder(probabilities, repairs);
    expect(found.order).toEqual(order);
    expect(found.seconds).toBeCloseTo(best, 9);
  });

  test("no order costs less; the worst is as printed", () => {
    expect(Math.min(...costs)).toBeCloseTo(best, 9);
    expect(Math.max(...costs)).toBeCloseTo(worst, 9);
  });

  test("the trap: by p alone it costs more", () => {
    const byChance = places.toSorted((a, b) => (p[b] ?? 0) - (p[a] ?? 0));
    const cost = expectedRepair(probabilities, repairs, byChance);
    expect(cost).toBeGreaterThan(best + 0.5);
    if (natural !== undefined) expect(cost).toBeCloseTo(natural, 9);
  });

  test.for([
    ["exact", 4000],
    ["looking ahead", 0],
  ] as const)("the planner takes the same steps, %s", ([, sets]) => {
    const problem = { probabilities, fine: p.map(() => false), tests: [], repairs };
    const first = plan(problem, { sets });
    expect(first.seconds + mending).toBeCloseTo(best, 9);
    let left = probabilities;
    const taken = order.map(() => {
      const { next } = plan({ ...problem, probabilities: left }, { sets });
      const at = next.step === "repair" ? next.at : -1;
      left = left.map((one, other) => (other === at ? 0 : one));
      return at;
    });
    expect(taken).toEqual(order);
  });
});

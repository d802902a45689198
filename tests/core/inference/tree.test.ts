import { describe, expect, test } from "vitest";
import type { Knot, State } from "#core/inference/knot.ts";
import { believe } from "#core/inference/tree.ts";
import { type Random, seeded } from "#core/units/random.ts";

/** Any join will do for the oracle, so long as it is not symmetrical. */
const join = (above: number, below: number): number => (above * 31 + below * 7 + 3) % 101;

const states = (random: Random): State[] =>
  [0, 1, 1, 1, 2, 2].map((faults) => ({
    faults,
    weight: faults === 0 ? 1 : random() / 4,
    behaviour: Math.floor(random() * 5),
  }));

/** Each child of a fork gets something else of the whole. */
const towards = (whole: number, child: number): number => (whole * 13 + child * 29 + 5) % 101;

function randomTree(random: Random, depth: number, forks = false): Knot {
  const likelihoods = Array.from({ length: 101 }, () => random());
  const below =
    depth === 0
      ? []
      : Array.from({ length: 1 + Math.floor(random() * 2) }, () =>
          randomTree(random, depth - 1, forks),
        );
  if (below.length > 0)
    return { states: states(random), below, ...(forks && random() < 0.7 ? { towards } : {}) };
  return { states: states(random), below, likelihood: (way) => likelihoods[way] ?? 0 };
}

const knotsOf = (knot: Knot): Knot[] => [knot, ...knot.below.flatMap(knotsOf)];

/** Every way to choose a state for every knot with at most `limit` faults on the way to any end, with its probability. */
function* worlds(
  knots: readonly Knot[],
  parents: ReadonlyMap<Knot, Knot>,
  limit: number,
  chosen: Map<Knot, number> = new Map(),
): Generator<{ chosen: ReadonlyMap<Knot, number>; weight: number }> {
  const [knot, ...rest] = knots;
  if (knot === undefined) {
    yield { chosen: new Map(chosen), weight: weigh(chosen, parents) };
    return;
  }
  for (const at of knot.states.keys()) {
    chosen.set(knot, at);
    if (faultsOnTheWay(knot, chosen, parents) <= limit) yield* worlds(rest, parents, limit, chosen);
    chosen.delete(knot);
  }
}

function faultsOnTheWay(
  knot: Knot | undefined,
  chosen: ReadonlyMap<Knot, number>,
  parents: ReadonlyMap<Knot, Knot>,
): number {
  if (knot === undefined) return 0;
  const own = knot.states[chosen.get(knot) ?? 0]?.faults ?? 0;
  return own + faultsOnTheWay(parents.get(knot), chosen, parents);
}

function wayTo(
  knot: Knot | undefined,
  chosen: ReadonlyMap<Knot, number>,
  parents: ReadonlyMap<Knot, Knot>,
): number {
  if (knot === undefined) return 0;
  const own = knot.states[chosen.get(knot) ?? 0]?.behaviour ?? 0;
  const parent = parents.get(knot);
  const above = wayTo(parent, chosen, parents);
  const child = parent?.below.indexOf(knot) ?? 0;
  return join(parent?.towards?.(above, child) ?? above, own);
}

function weigh(chosen: ReadonlyMap<Knot, number>, parents: ReadonlyMap<Knot, Knot>): number {
  let product = 1;
  for (const [knot, at] of chosen)
    product *=
      (knot.states[at]?.weight ?? 0) * (knot.likelihood?.(wayTo(knot, chosen, parents)) ?? 1);
  return product;
}

describe("beliefs against enumeration of every world", () => {
  test.for([
    ["one knot", 0, 1, false],
    ["two levels", 1, 2, false],
    ["two levels, again", 1, 3, false],
    ["three levels", 2, 4, false],
    ["three levels, again", 2, 5, false],
    ["two levels, with forks", 1, 2, true],
    ["three levels, with forks", 2, 4, true],
    ["three levels, with forks, again", 2, 7, true],
  ] as const)("%s", ([, depth, seed, forks]) => {
    const root = randomTree(seeded(seed), depth, forks);
    const knots = knotsOf(root);
    const parents = new Map(
      knots.flatMap((knot) => knot.below.map((child) => [child, knot] as const)),
    );
    const marginals = new Map(knots.map((knot) => [knot, new Float64Array(knot.states.length)]));
    const count = (chosen: ReadonlyMap<Knot, number>, weight: number) => {
      for (const [knot, at] of chosen) {
        const sum = marginals.get(knot);
        if (sum !== undefined) sum[at] = (sum[at] ?? 0) + weight;
      }
    };
    let all = 0;
    for (const { chosen, weight } of worlds(knots, parents, 2)) {
      all += weight;
      count(chosen, weight);
    }
    const belief = believe(root, 0, join, 2);
    for (const knot of knots) {
      const [expected, got] = [marginals.get(knot), belief.states(knot)];
      for (const [at, sum] of (expected ?? new Float64Array()).entries())
        expect(got[at]).toBeCloseTo(sum / all, 12);
      expect(got.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
    }
  });

  test("what stands above an end is told with its ways", () => {
    const root = randomTree(seeded(4), 2);
    const belief = believe(root, 0, join, 2);
    for (const end of knotsOf(root).filter(({ below }) => below.length === 0)) {
      const sum = belief.ways(end).reduce((total, { probability }) => total + probability, 0);
      expect(sum).toBeCloseTo(1, 8);
    }
  });
});

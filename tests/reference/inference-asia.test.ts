import { describe, expect, test } from "vitest";
import type { Knot, State } from "#core/inference/knot.ts";
import { believe } from "#core/inference/tree.ts";

/**
 * 'Asia', the chest clinic of Lauritzen and Spiegelhalter (1988), with its printed tables. Smoking makes lung cancer and bronchitis
 * likelier, a visit to Asia tuberculosis; either of the two diseases shows on an x-ray, and they or bronchitis give dyspnoea.
 * As a tree: smoke, lung and bronchitis together at the root, Asia and tuberculosis below it, and what was seen at the end.
 */
const given = {
  asia: 0.01,
  smoke: 0.5,
  tub: { yes: 0.05, no: 0.01 },
  lung: { yes: 0.1, no: 0.01 },
  bronc: { yes: 0.6, no: 0.3 },
  xray: { yes: 0.98, no: 0.05 },
};

/** A behaviour is a number with a bit for each thing that is so. */
const bit = { smoke: 1, lung: 2, bronc: 4, asia: 8, tub: 16 } as const;
type Name = keyof typeof bit;
const has = (world: number, name: Name): boolean => (world & bit[name]) > 0;
const chance = (is: boolean, p: number): number => (is ? p : 1 - p);
const row = (is: boolean, table: { yes: number; no: number }): number =>
  is ? table.yes : table.no;

const statesOf = (names: readonly Name[], weigh: (world: number) => number): State[] =>
  Array.from({ length: 2 ** names.length }, (_, at) => {
    const behaviour = names.reduce(
      (sum, name, place) => sum + (at & (1 << place) ? bit[name] : 0),
      0,
    );
    return { faults: 0, behaviour, weight: weigh(behaviour) };
  });

const chest = statesOf(["smoke", "lung", "bronc"], (world) => {
  const smoke = has(world, "smoke");
  return (
    chance(smoke, given.smoke) *
    chance(has(world, "lung"), row(smoke, given.lung)) *
    chance(has(world, "bronc"), row(smoke, given.bronc))
  );
});

const travel = statesOf(["asia", "tub"], (world) => {
  const asia = has(world, "asia");
  return chance(asia, given.asia) * chance(has(world, "tub"), row(asia, given.tub));
});

/** What was seen: left out where it was not. */
interface Seen {
  readonly asia?: boolean;
  readonly dysp?: boolean;
  readonly xray?: boolean;
}

const either = (world: number): boolean => has(world, "tub") || has(world, "lung");
const xray = (world: number): number => row(either(world), given.xray);
const dysp = (world: number): number =>
  either(world)
    ? row(has(world, "bronc"), { yes: 0.9, no: 0.7 })
    : row(has(world, "bronc"), { yes: 0.8, no: 0.1 });

const likelihood =
  (seen: Seen) =>
  (world: number): number =>
    (seen.asia === undefined || seen.asia === has(world, "asia") ? 1 : 0) *
    (seen.dysp === undefined ? 1 : chance(seen.dysp, dysp(world))) *
    (seen.xray === undefined ? 1 : chance(seen.xray, xray(world)));

/** The posterior of anything that is so in some worlds, by the ways to the end of the tree. */
function posterior(seen: Seen): (so: (world: number) => number) => number {
  const end: Knot = { states: travel, below: [], likelihood: likelihood(seen) };
  const root: Knot = { states: chest, below: [end] };
  const { ways } = believe(root, 0, (above, below) => above | below, 0);
  return (so) =>
    ways(end).reduce((sum, { behaviour, probability }) => sum + probability * so(behaviour), 0);
}

const is = (name: Name) => (world: number) => Number(has(world, name));

describe("nothing seen", () => {
  const p = posterior({});

  // Printed in the paper and by the R package gRain; the rest computed from the tables (facts, section 10).
  test("lung .055, bronchitis .45, both .0315", () => {
    expect(p(is("lung"))).toBeCloseTo(0.055, 9);
    expect(p(is("bronc"))).toBeCloseTo(0.45, 9);
    expect(p((world) => is("lung")(world) * is("bronc")(world))).toBeCloseTo(0.0315, 9);
  });

  test("tuberculosis .0104, either .064828, x-ray .11029004, dyspnoea .4359706", () => {
    expect(p(is("tub"))).toBeCloseTo(0.0104, 9);
    expect(p((world) => Number(either(world)))).toBeCloseTo(0.064828, 9);
    expect(p(xray)).toBeCloseTo(0.11029004, 8);
    expect(p(dysp)).toBeCloseTo(0.4359706, 7);
  });
});

describe("been to Asia, with dyspnoea", () => {
  const p = posterior({ asia: true, dysp: true });

  // As printed by the R package gRain.
  test("lung 0.09952515, bronchitis 0.8114021", () => {
    expect(p(is("lung"))).toBeCloseTo(0.09952515, 8);
    expect(p(is("bronc"))).toBeCloseTo(0.8114021, 7);
  });

  // Printed there too: the chance of this evidence is what it makes of one more state that explains all of it.
  test("the evidence has probability 0.004501375", () => {
    const seen = likelihood({ asia: true, dysp: true });
    const sure = 1024;
    const end: Knot = {
      states: travel,
      below: [],
      likelihood: (world) => (world >= sure ? 1 : seen(world)),
    };
    const one: State = { faults: 0, behaviour: sure, weight: 1 };
    const root: Knot = { states: [...chest, one], below: [end] };
    const explained =
      believe(root, 0, (above, below) => above | below, 0)
        .states(root)
        .at(-1) ?? 0;
    expect(1 / explained - 1).toBeCloseTo(0.004501375, 9);
  });

  // Computed from the tables (facts, section 10).
  test("smoker .625920, tuberculosis .087751, either .182300, x-ray .219539", () => {
    expect(p(is("smoke"))).toBeCloseTo(0.62592, 6);
    expect(p(is("tub"))).toBeCloseTo(0.087751, 6);
    expect(p((world) => Number(either(world)))).toBeCloseTo(0.1823, 6);
    expect(p(xray)).toBeCloseTo(0.219539, 6);
  });
});

// Computed from the tables (facts, section 10).
test("with the x-ray as well: tuberculosis .391712, lung .444271, bronchitis .628822", () => {
  const p = posterior({ asia: true, dysp: true, xray: true });
  expect(p(is("tub"))).toBeCloseTo(0.391712, 6);
  expect(p(is("lung"))).toBeCloseTo(0.444271, 6);
  expect(p(is("bronc"))).toBeCloseTo(0.628822, 6);
});

test("dyspnoea alone: lung .102759, bronchitis .833967", () => {
  const p = posterior({ dysp: true });
  expect(p(is("lung"))).toBeCloseTo(0.102759, 6);
  expect(p(is("bronc"))).toBeCloseTo(0.833967, 6);
});

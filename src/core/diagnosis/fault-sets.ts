import { straight } from "#core/rig/behaviour.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { OwnStep, Segment } from "#core/rig/segments.ts";
import type { Pool } from "./pool.ts";

/** At most two of a segment's faults, with how likely that is against none of them. */
export interface FaultSet {
  readonly faults: readonly RigFault[];
  /** Odds against the empty set. */
  readonly weight: number;
}

/** Odds that no fault on the list is the cause, in 10,000. Common practice, no source. */
const unlistedWeight = 100;

/** 'Something not on the list', in one segment. */
export const unlisted = (segment: Segment): RigFault => ({
  id: `${segment.positions.join(", ")} / something not on the list`,
  name: "something not on the list",
  part: segment.positions.join(", "),
  place: segment.positions.join(", "),
  at: "",
  edits: [],
  weight: unlistedWeight,
  slot: "",
  seen: false,
  repair: 300,
});

export const isUnlisted = ({ name }: RigFault): boolean => name === "something not on the list";

/** No fault, each fault, each two that can be there together. What is not on the list stands alone. */
export function faultSets(
  faults: readonly RigFault[],
  other: RigFault,
  most: number,
): readonly FaultSet[] {
  const singles = [...faults, other].map((fault) => ({
    faults: [fault],
    weight: odds(fault),
  }));
  const none = { faults: [], weight: 1 };
  if (most < 2) return [none, ...singles];
  const pairs = faults.flatMap((first, at) =>
    faults
      .slice(at + 1)
      .filter((second) => first.part !== second.part || first.slot !== second.slot)
      .map((second) => ({ faults: [first, second], weight: odds(first) * odds(second) })),
  );
  return [none, ...singles, ...pairs];
}

const odds = ({ weight }: RigFault): number => weight / (10_000 - weight);

/** What the segment does under a set, as the pool's number, from the steps' own circuits; each is solved once. */
export function behaviourReader(pool: Pool, segment: Segment, solved: Map<string, number>) {
  const unlistedNumber = () => pool.number({ ...pool.behaviour(through([])), unlisted: true });
  const through = (faults: readonly RigFault[]): number =>
    segment.steps.reduce(
      (sum, step) => pool.join(sum, stepNumber(pool, step, faults, solved)),
      pool.straight,
    );
  return (faults: readonly RigFault[]): number =>
    faults.some(isUnlisted) ? unlistedNumber() : through(faults);
}

function stepNumber(
  pool: Pool,
  step: OwnStep,
  faults: readonly RigFault[],
  solved: Map<string, number>,
): number {
  const own = faults.map((fault) => step.faults.indexOf(fault)).filter((at) => at >= 0);
  const key = `${step.shape} ${step.faults.length} ${own}`;
  const known = solved.get(key);
  if (known !== undefined) return known;
  const behaviour = step.behaviour(own.flatMap((at) => step.faults[at] ?? []));
  const number = pool.number({ ...straight, ...behaviour });
  solved.set(key, number);
  return number;
}

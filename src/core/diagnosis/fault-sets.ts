import { straight } from "#core/rig/behaviour.ts";
import { midband } from "#core/rig/midband.ts";
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
export function behaviourReader(pool: Pool, segment: Segment, solved: Solved) {
  const ends = endsOf(segment);
  const steps = segment.steps.map((step) => stepReader(pool, step, solved));
  const whole = (read: (end: string) => number): number => {
    const [first, ...rest] = ends.map(read);
    return first !== undefined && rest.length === 0 ? first : pool.fork(ends.map(read));
  };
  const through = (faults: readonly RigFault[], end: string): number =>
    steps.reduce((sum, step) => pool.join(sum, step(faults, end)), pool.straight);
  const unlistedNumber = (end: string) =>
    pool.number({ ...pool.behaviour(through([], end)), unlisted: true });
  const steady = (faults: readonly RigFault[]): number =>
    whole((end) => (faults.some(isUnlisted) ? unlistedNumber(end) : through(faults, end)));
  return (faults: readonly RigFault[]): number => changing(pool, faults, steady);
}

/** A position behind each thing that hangs on one circuit of a segment; any one where all of its steps are the same for all. */
function endsOf({ positions, steps, below }: Segment): readonly string[] {
  const forks = steps.some(
    ({ branch }) => new Set(positions.map((position) => branch(position))).size > 1,
  );
  const ends = forks ? below.map((one) => one.positions) : [positions];
  return ends.map(([first]) => {
    if (first === undefined) throw new Error("a branch without a position");
    return first;
  });
}

/** With contacts that come and go, half of the time each, what the rest does with them and without. */
function changing(
  pool: Pool,
  faults: readonly RigFault[],
  steady: (faults: readonly RigFault[]) => number,
): number {
  const loose = faults.find(({ comesAndGoes }) => comesAndGoes);
  if (loose === undefined) return steady(faults);
  const rest = faults.filter((fault) => fault !== loose);
  const there = (with_: readonly RigFault[]) =>
    changing(pool, rest, (others) => steady([...with_, ...others]));
  return pool.half(there([loose]), there([]));
}

/** What steps of a shape do under some of their faults, by the places of these in the step's list. */
export type Solved = Map<string, Map<string, number>>;

/** What a step does under those of some faults that are its own, towards an end, as the pool's number; each is solved once a shape. */
function stepReader(pool: Pool, step: OwnStep, solved: Solved) {
  const shape = `${step.shape} ${step.faults.length}`;
  const known = solved.get(shape) ?? new Map<string, number>();
  solved.set(shape, known);
  const places = new Map(step.faults.map((fault, at) => [fault, at]));
  const branches = new Map<string, number>();
  const branchTo = (end: string): number => {
    const branch = branches.get(end) ?? step.branch(end);
    branches.set(end, branch);
    return branch;
  };
  return (faults: readonly RigFault[], end: string): number => {
    const own = faults.filter((fault) => places.has(fault));
    const branch = branchTo(end);
    const key = `${branch} ${own.map((fault) => places.get(fault))}`;
    const found =
      known.get(key) ?? pool.number({ ...straight, ...step.behaviour(own, branch, midband) });
    known.set(key, found);
    return found;
  };
}

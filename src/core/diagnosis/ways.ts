import { straight } from "#core/rig/behaviour.ts";
import { midband } from "#core/rig/midband.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { type Step, stepsTo } from "#core/rig/steps.ts";
import { isUnlisted } from "./fault-sets.ts";
import type { Pool } from "./pool.ts";

/** What steps do one after the other under some faults, after what was gone through before; of what is not on the list nothing is known. */
export function through(
  pool: Pool,
  ops: readonly Op[],
  faults: readonly RigFault[],
  before: number = pool.straight,
): number {
  const number = ops.reduce((sum, op) => pool.join(sum, op.read(faults)), before);
  return faults.some(isUnlisted) ? pool.unlisted(number) : number;
}

/** One step on the way to a position, and what it does under those of some faults that are its own, as the pool's number. */
export interface Op {
  /** Two with one key do the same under the same faults. */
  readonly key: string;
  /** Two of one shape do the same under faults that have the same places in their lists. */
  readonly shape: number;
  /** Every fault of its own, with its place in the list. */
  readonly faults: ReadonlyMap<RigFault, number>;
  readonly read: (faults: readonly RigFault[]) => number;
  /** What it does with nothing wrong. */
  readonly healthy: number;
}

/** The ways through a rig that is plugged so, step by step from the source. */
export interface Ways {
  readonly rig: BuiltRig;
  readonly to: (position: string) => readonly Op[];
}

/** What steps of a shape do under some of their faults, by the places of these in the step's list; and the number of the shape. */
export type Solved = Map<string, { readonly serial: number; readonly under: Map<string, number> }>;

/** The ways of a rig. Faults that are known already, by id, stay the objects they are. */
export function waysOf(drawn: Rig, pool: Pool, solved: Solved, known: Map<string, RigFault>): Ways {
  const rig = build(drawn);
  const faults = rigFaults(rig).map((fault) => known.get(fault.id) ?? fault);
  for (const fault of faults) known.set(fault.id, fault);
  const steps = new Map<string, { step: Step; own: readonly RigFault[]; ops: Map<number, Op> }>();
  const ways = new Map<string, readonly Op[]>();
  const opOf = (step: Step, position: string): Op => {
    const found = steps.get(step.id) ?? { step, own: faults.filter(step.owns), ops: new Map() };
    steps.set(step.id, found);
    const branch = step.branch(position);
    const op = found.ops.get(branch) ?? opTowards({ pool, solved, step, branch }, found.own);
    found.ops.set(branch, op);
    return op;
  };
  const to = (position: string): readonly Op[] => {
    const way = ways.get(position) ?? stepsTo(rig, position).map((step) => opOf(step, position));
    ways.set(position, way);
    return way;
  };
  return { rig, to };
}

/** A step towards one of its branches, before it is worked out. */
interface Towards {
  readonly pool: Pool;
  readonly solved: Solved;
  readonly step: Step;
  readonly branch: number;
}

/** A step with those of its faults that do something: knobs that do nothing in this rig, as those of a socket nobody uses, are left out. */
function opTowards(towards: Towards, own: readonly RigFault[]): Op {
  const raw = opWith(towards, own);
  const acts = own.filter((fault) => fault.at !== "settings" || raw.read([fault]) !== raw.healthy);
  return acts.length === own.length ? raw : opWith(towards, acts);
}

function opWith({ pool, solved, step, branch }: Towards, own: readonly RigFault[]): Op {
  const shape = `${step.shape} ${branch} ${own.map(step.called)}`;
  const known = solved.get(shape) ?? { serial: solved.size, under: new Map<string, number>() };
  solved.set(shape, known);
  const { serial, under } = known;
  const places = new Map(own.map((fault, at) => [fault, at]));
  const steady = (faults: readonly RigFault[]): number => {
    const key = faults.map((fault) => places.get(fault)).join();
    const found =
      under.get(key) ?? pool.number({ ...straight, ...step.behaviour(faults, branch, midband) });
    under.set(key, found);
    return found;
  };
  const healthy = steady([]);
  return {
    key: `${step.id} ${serial}`,
    shape: serial,
    faults: places,
    read: (faults) => {
      const there = faults.filter((fault) => places.has(fault));
      return there.length === 0 ? healthy : changing(pool, there, steady);
    },
    healthy,
  };
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

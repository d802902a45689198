import type { State } from "#core/inference/knot.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Branch, mostFaults } from "./branch.ts";
import type { Channel } from "./channels.ts";
import { isThere, type Life, thereAt } from "./course.ts";
import { type FaultSet, faultSets, isUnlisted } from "./fault-sets.ts";
import type { Model } from "./model.ts";
import type { AcrossBranch } from "./tokens.ts";
import { type Op, through } from "./ways.ts";

/** A branch with every life its faults may have had, and the ways into it. */
interface Place {
  readonly branch: Branch;
  readonly own: readonly Channel[];
  readonly lives: readonly Life[];
  /** The faults that circuits further down need. */
  readonly deeper: ReadonlySet<RigFault>;
}

/** Every set of lives that a branch may have had, and what it does under each. */
export interface Settled {
  readonly sets: () => readonly FaultSet[];
  readonly states: readonly State[];
}

/** Branches of one kind share their states, and with them all that is worked out from these. */
export function settledOf(model: Model, place: Place): Settled {
  const { settled } = model;
  const key = nameOf(place);
  const known = settled.get(key);
  if (known !== undefined) return known;
  let made: readonly FaultSet[] | undefined;
  const sets = () => {
    made ??= faultSets(place.lives, mostFaults);
    return made;
  };
  const across = reachesAcross(place);
  const kind = across ? key : kindOf(place);
  const states = settled.get(kind)?.states ?? statesOf(sets(), tokenReader(model, place, across));
  const own = { sets, states };
  settled.set(kind, own);
  settled.set(key, own);
  return own;
}

const statesOf = (
  sets: readonly FaultSet[],
  token: (lives: readonly Life[]) => number,
): readonly State[] =>
  sets.map(({ lives, weight }) => ({ faults: lives.length, weight, behaviour: token(lives) }));

/** This branch, gone into so. */
function nameOf({ branch, own, lives }: Place): string {
  const there = (epoch: number) => lives.map((life) => (isThere(life, epoch) ? 1 : 0)).join("");
  return [
    branch.positions.join(),
    ...own.map(({ ops, epoch, up }) => `${up} ${ops.map((op) => op.key)} ${there(epoch)}`),
    lives.map(({ from, until }) => `${from}-${until}`).join(),
  ].join("|");
}

/** Branches of one kind behave alike under lives that have the same places in their lists. */
function kindOf({ own, lives }: Place): string {
  const slotOf = ({ part, slot }: RigFault) => `${part} ${slot}`;
  const slots = [...new Set(lives.map(({ fault }) => slotOf(fault)))];
  const lived = lives.map(
    ({ fault, from, until, odds }) =>
      `${odds} ${from}-${until} ${slots.indexOf(slotOf(fault))} ${isUnlisted(fault)}`,
  );
  const goneInto = ({ ops, epoch, up }: Channel): string => {
    const read = (op: Op) => `${op.shape}: ${lives.map(({ fault }) => op.faults.get(fault) ?? "")}`;
    return `${up} ${lives.map((life) => isThere(life, epoch))} ${ops.map(read)}`;
  };
  return ["of a kind", ...lived, ...own.map(goneInto)].join("|");
}

/** Reads what a set of lives does in a branch, as a token; `across`: together with what waits above it. */
function tokenReader(
  { pool, tokens }: Model,
  { branch, own, deeper }: Place,
  across: boolean,
): (lives: readonly Life[]) => number {
  if (!across)
    return (lives) =>
      tokens.vector(own.map(({ ops, epoch }) => through(pool, ops, thereAt(lives, epoch))));
  const steps = own.map(({ ops, epoch, up }) => `${up} ${epoch} ${ops.map((op) => op.key)}`);
  const reaching: AcrossBranch = { name: `${branch.positions} ${steps}`, channels: own, deeper };
  return (lives) => tokens.across(reaching, lives);
}

/** Whether a circuit has faults of this branch and of another. */
function reachesAcross({ branch: { faults }, own, deeper }: Place): boolean {
  const mine = new Set(faults);
  const foreign = ({ faults: all }: Op) => [...all.keys()].some((fault) => !mine.has(fault));
  return faults.some((fault) => deeper.has(fault)) || own.some(({ ops }) => ops.some(foreign));
}

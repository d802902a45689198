import { type Look, looksAt } from "#core/checks/look.ts";
import type { Joined } from "#core/inference/rows.ts";
import { type BuiltRig, instrumentAt, type Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Answers, answersFor } from "./answers.ts";
import { type Bare, type Branch, treeOf, withBelow } from "./branch.ts";
import { isUnlisted, unlisted } from "./fault-sets.ts";
import type { Likelihood } from "./likelihood.ts";
import { createPool, type Pool } from "./pool.ts";
import { createRecent, type Recent } from "./recent.ts";
import { remembered } from "./remembered.ts";
import { createDense } from "./remembered-numbers.ts";
import type { Settled } from "./settled.ts";
import { createTokens, type Tokens } from "./tokens.ts";
import { type Solved, through, type Ways, waysOf } from "./ways.ts";

/** All that can be said of a rig before anything was found: made once, when the rig is drawn. */
export interface Model extends Answers {
  readonly drawn: Rig;
  readonly rig: BuiltRig;
  readonly pool: Pool;
  readonly tokens: Tokens;
  readonly root: Branch;
  readonly branches: readonly Branch[];
  /** The branches on the way to a position, from the source. Throws on a position the rig lacks. */
  readonly wayTo: (position: string) => readonly Branch[];
  /** What the way to a position does under some faults, as the pool's number. */
  readonly under: (position: string, faults: readonly RigFault[]) => number;
  /** What the way to a position does with nothing wrong. */
  readonly healthy: (position: string) => number;
  readonly looks: readonly Look[];
  /** The ways of the rig as drawn, and of another arrangement of its parts. */
  readonly ways: Ways;
  readonly waysOf: (rig: Rig) => Ways;
  /** Every fault there may be in some arrangements of the rig's parts. */
  readonly faultsIn: (rigs: readonly Rig[]) => readonly RigFault[];
  readonly branchOf: (bare: Bare) => Branch;
  /** One way that stands for all that would be answered alike at a position, in every channel. */
  readonly standIn: (position: string, talked: boolean) => (way: number) => number;
  /** Small numbers for behaviours, and for ways of many channels, that were asked about. */
  readonly dense: (behaviour: number) => number;
  readonly denseWays: (way: number) => number;
  /** What joining states to what is above them makes, kept from one question to the next. */
  readonly joined: Joined;
  /** What was found at positions of one kind, as likelihoods of the way to them. */
  readonly likelihoods: Recent<Likelihood>;
  /** What was worked out of branches under moves, by name and by kind. */
  readonly settled: Map<string, Settled>;
}

/** Reads what the way to a position does under some faults; single ones are remembered. */
function underFaults(
  pool: Pool,
  ways: Ways,
): (position: string, faults: readonly RigFault[]) => number {
  const whole = (position: string, faults: readonly RigFault[]): number =>
    through(pool, ways.to(position), faults);
  const alone = remembered((position: string) =>
    remembered((fault: RigFault) => whole(position, [fault])),
  );
  return (position, faults) => {
    const [first] = faults;
    return first !== undefined && faults.length === 1
      ? alone(position)(first)
      : whole(position, faults);
  };
}

/** Arrangements of a rig's parts, each made once, and every fault met in them by its id. */
function arrangementsIn(pool: Pool) {
  const solved: Solved = new Map();
  const known = new Map<string, RigFault>();
  const made = new Map<string, Ways>();
  const of = (rig: Rig): Ways => {
    const key = JSON.stringify([rig.parts, rig.plugged, rig.positions]);
    const ways = made.get(key) ?? waysOf(rig, pool, solved, known);
    made.set(key, ways);
    return ways;
  };
  return { of, known };
}

/** Gives every stretch of a rig as drawn its 'something not on the list', and its looks. */
function branchMaker({ rig }: Ways, drawn: Bare): (bare: Bare) => Branch {
  const key = (one: Bare) => one.positions.join("\n");
  const others = new Map(withBelow(drawn).map((one) => [key(one), unlisted(one.positions)]));
  const branchOf = (bare: Bare): Branch => {
    const other = others.get(key(bare));
    return {
      positions: bare.positions,
      faults: other === undefined ? bare.faults : [...bare.faults, other],
      looks: looksAt(rig, bare.faults),
      below: bare.below.map(branchOf),
    };
  };
  return branchOf;
}

/** What all would be answered alike stands for, in ways of one channel or many. */
function standIns(tokens: Tokens, { standFor, standForTalk }: Answers): Model["standIn"] {
  const standing = remembered((stand: (behaviour: number) => number) =>
    remembered((way: number) => tokens.map(way, stand)),
  );
  return (position, talked) => standing((talked ? standForTalk : standFor)(position));
}

/** Reads the branches on the way to a position. */
const wayAmong = (branches: readonly Branch[]): Model["wayTo"] =>
  remembered((position: string) => {
    const way = branches.filter((one) => one.positions.includes(position));
    if (way.length === 0) throw new Error(`the rig has no position named ${position}`);
    return way;
  });

/** Works out the ways through a rig, and what can be wrong in each stretch of them. Takes a fraction of a second. */
export function modelOf(drawn: Rig): Model {
  const pool = createPool();
  const tokens = createTokens(pool);
  const arrangements = arrangementsIn(pool);
  const ways = arrangements.of(drawn);
  const bare = treeOf(
    ways.rig.positions.map(({ id }) => id),
    [ways],
  );
  const branchOf = branchMaker(ways, bare);
  const root = branchOf(bare);
  const branches = withBelow(root);
  const under = underFaults(pool, ways);
  const healthy = remembered((position: string) => under(position, []));
  const instrument = remembered((position: string) => instrumentAt(ways.rig, position));
  const answers = answersFor({ pool, healthy, instrument });
  return {
    ...answers,
    drawn,
    rig: ways.rig,
    pool,
    tokens,
    root,
    branches,
    wayTo: wayAmong(branches),
    under,
    healthy,
    looks: branches.flatMap((branch) => branch.looks),
    ways,
    waysOf: arrangements.of,
    faultsIn: (rigs) => {
      for (const one of rigs) arrangements.of(one);
      const others = branches.flatMap(({ faults }) => faults.filter(isUnlisted));
      return [...arrangements.known.values(), ...others];
    },
    branchOf,
    standIn: standIns(tokens, answers),
    dense: createDense(),
    denseWays: createDense(),
    joined: new WeakMap(),
    likelihoods: createRecent(200),
    settled: new Map(),
  };
}

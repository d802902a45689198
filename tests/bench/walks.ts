import type { Advice, Standing } from "#core/diagnosis/advice.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import type { Random } from "#core/units/random.ts";
import type { Probability } from "#core/units/units.ts";
import { askingCost, movingCost, somebodyElse } from "./costs.ts";
import { found, type Person, personOf } from "./person.ts";
import { type Named, namedBy, type Spent, type Verdict, verdictOf } from "./verdicts.ts";
import { moved, type World, works, worldOf } from "./world.ts";

/** What is walked: a position of a rig, what is planted, how often a finger slips. */
export interface Case {
  readonly rig: Rig;
  readonly position: string;
  readonly planted: readonly RigFault[];
  readonly slips: Probability;
  readonly random: Random;
  /** Hears each step as it is done. */
  readonly told?: (step: string) => void;
}

/** How a walk ended: seconds and steps until the position works or the policy gives up, which costs what somebody else takes. */
export interface Outcome extends Spent {
  readonly works: boolean;
}

/** The program's verdict, and what came of it. */
export interface Walked {
  readonly verdict: Verdict;
  readonly named?: Named;
  readonly outcome: Outcome;
}

/** As a walk stands. */
interface Walk extends Spent {
  readonly world: World;
  readonly log: Log;
  readonly seat: string;
  readonly named?: Named;
}

/** More steps to a verdict than this, and the program is lost; more in all, or one move so often on end, and it gives up. */
const mostToVerdict = 30;
const mostInAll = 45;
const mostOnEnd = 3;

const drawing = (rig: Rig): Log => add([], { entry: "drawing", rig }, 0);

/** Follows the program at a position: to its verdict, then with the repairs that it names until it works. */
export function walked(one: Case, before: Log = drawing(one.rig)): Walked {
  const person = personOf(one.slips, one.random);
  const world = worldOf(derivedOf(before).model, one.planted);
  const start: Walk = { world, log: before, seat: one.position, seconds: 0, steps: 0 };
  const first = untilVerdict(start, one, person, mostToVerdict);
  const standing = derivedOf(first.log).standing(one.position);
  const verdict = verdictOf(one.planted, first.world, standing, first);
  let walk = first;
  while (walk.steps < mostInAll && !turnsRound(walk)) {
    const derived = derivedOf(walk.log);
    const move = repairNamed(derived.standing(one.position));
    if (move === undefined) break;
    walk = untilVerdict(acted(walk, move, derived, person, one), one, person, mostInAll);
  }
  const well = works(walk.world, one.position);
  const seconds = walk.seconds + (well ? 0 : somebodyElse);
  const outcome = { seconds, steps: walk.steps, works: well };
  return { verdict, outcome, ...(walk.named ? { named: walk.named } : {}) };
}

function derivedOf(log: Log): Derived {
  const derived = derive(log);
  if (derived === undefined) throw new Error("the log draws no rig");
  return derived;
}

/** Does what the program says until it ends, or until that makes no sense any more. */
function untilVerdict(start: Walk, one: Case, person: Person, most: number): Walk {
  let walk = start;
  while (walk.steps < most && !turnsRound(walk)) {
    const derived = derivedOf(walk.log);
    const standing = derived.standing(one.position);
    const { advice } = standing;
    const named = walk.named ?? namedBy(walk.world, standing);
    if (named !== undefined) walk = { ...walk, named };
    if (advice.advice === "healthy" || advice.advice === "verdict") break;
    const { seconds } = walk;
    walk = stepped(walk, advice, derived, person, one);
    one.told?.(`${JSON.stringify(walk.log.at(-1))} ${walk.seconds - seconds} s`);
  }
  return walk;
}

/** Whether the last steps were the same move over and over. */
function turnsRound({ log }: Walk): boolean {
  const last = log.slice(-mostOnEnd).map((one) => (one.entry === "move" ? one.move : undefined));
  const moves = new Set(last.map((move) => JSON.stringify(move)));
  return last.length === mostOnEnd && moves.size === 1 && last[0] !== undefined;
}

/** One step of what the program says. */
function stepped(walk: Walk, advice: Advice, derived: Derived, person: Person, one: Case): Walk {
  if (advice.advice === "do") return acted(walk, advice.move, derived, person, one);
  if (advice.advice !== "ask") throw new Error("there is nothing to do");
  const { asked } = advice.option;
  if (asked.check === "matrix") throw new Error("nobody measures here");
  const seat = "position" in asked ? asked.position : walk.seat;
  const finding = found(walk.world, person, asked, derived.evidence.nowAt(seat));
  return {
    ...walk,
    seat,
    log: add(walk.log, { entry: "finding", finding }, 0),
    seconds: walk.seconds + askingCost(walk.world.model, asked, walk.seat),
    steps: walk.steps + 1,
  };
}

const acted = (
  walk: Walk,
  move: Move,
  { evidence }: Derived,
  person: Person,
  { position }: Case,
): Walk => ({
  ...walk,
  world: moved(walk.world, move, person.random),
  log: add(walk.log, { entry: "move", move }, 0),
  seconds: walk.seconds + movingCost(evidence, move, position),
  steps: walk.steps + 1,
});

/** The repair that a verdict names; what is not on the list is left to somebody else. */
function repairNamed({ advice, choice, leading }: Standing): Move | undefined {
  if (advice.advice !== "verdict") return undefined;
  const listed = !leading?.group.faults.some(isUnlisted) || choice?.best?.doing.do === "mend";
  return listed ? advice.mend?.move : undefined;
}

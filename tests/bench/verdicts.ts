import { type Advice, type Standing, shownIn } from "#core/diagnosis/advice.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import { onTheWay, type World, works } from "./world.ts";

/** How far a policy has come. */
export interface Spent {
  readonly seconds: Seconds;
  readonly steps: number;
}

/** The first suspect at the moment when the program first acts on it, by a verdict or a repair: how likely it is said to be, and whether it is there. */
export interface Named {
  readonly stated: Probability;
  readonly right: boolean;
}

/** What a standing names, where it acts on that; a position called healthy names nobody. */
export function namedBy(
  world: World,
  { advice, suspects: [first], position }: Standing,
): Named | undefined {
  const acts = advice.advice === "verdict" || (advice.advice === "do" && advice.cures);
  if (!acts || first === undefined) return undefined;
  const left = new Set(onTheWay(world, position).map(({ id }) => id));
  return {
    stated: first.probability,
    right: first.group.faults.some(({ id }) => left.has(id)),
  };
}

/** What the program said at its first verdict. */
export interface Verdict extends Spent {
  /** Lost: it would go on asking, or does the same over and over. */
  readonly end: "healthy" | "sure" | "unsure" | "lost";
  /** Of the planted faults, how many the first suspect names, and how many any that is shown; what is gone by then counts. */
  readonly first: number;
  readonly shown: number;
  /** Some planted fault is named first, or the repair that is proposed cures it: what is done next is right. */
  readonly right: boolean;
  /** Whether the position works now, in truth. */
  readonly works: boolean;
}

/** Scores what is said at the end of some steps. What a move has taken off the way, or cured, was found by that move. */
export function verdictOf(
  planted: readonly RigFault[],
  world: World,
  standing: Standing,
  { seconds, steps }: Spent,
): Verdict {
  const { advice, position } = standing;
  const left = new Set(onTheWay(world, position).map(({ id }) => id));
  const shown = advice.advice === "healthy" ? [] : shownIn(standing);
  const proposed = advice.advice === "verdict" ? advice.mend?.move : undefined;
  const cures = (fault: RigFault) =>
    proposed !== undefined && staying(fault, proposed, world.state.rig) < 0.5;
  const names = (some: readonly Suspect[]) => (fault: RigFault) =>
    !left.has(fault.id) || some.some(({ group }) => group.faults.some(({ id }) => id === fault.id));
  const named = planted.filter(names(shown.slice(0, 1))).length;
  return {
    seconds,
    steps,
    end: endOf(advice),
    first: named,
    right: named > 0 || planted.some(cures),
    shown: planted.filter(names(shown)).length,
    works: works(world, position),
  };
}

function endOf(advice: Advice): Verdict["end"] {
  if (advice.advice === "healthy") return "healthy";
  if (advice.advice !== "verdict") return "lost";
  return advice.sure ? "sure" : "unsure";
}

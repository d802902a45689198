import type { Noticed } from "#core/checks/finding.ts";
import type { Between } from "#core/level/spread.ts";
import type { Feed } from "#core/level/stages.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { Probability } from "#core/units/units.ts";
import { likelihoodOf, triedIn } from "./tried.ts";
import { worldsAt } from "./worlds.ts";

/** A set of gear that may be there, with how much it counts for after what was noticed. */
export interface Likely {
  readonly gear: Feed;
  readonly weight: number;
}

/**
 * The gear of a way as far as hiss tells of it: what is usual, drawn again and again, each draw by how well it goes with what was noticed while knobs were
 * turned. Nothing where nothing was noticed.
 */
export function likelyGear(
  rig: BuiltRig,
  position: string,
  findings: readonly Noticed[],
): readonly Likely[] {
  const tried = triedIn(findings);
  if (tried.size === 0) return [];
  const worlds = worldsAt(rig, position, "hiss")?.causes.flatMap((one) => one.worlds) ?? [];
  return worlds.flatMap((world) =>
    world.gear === undefined
      ? []
      : [{ gear: world.gear, weight: world.weight * likelihoodOf(world, tried.values()) }],
  );
}

/** What comes out of gear that may be there: the middle, and between what eight in ten lie, by their weights. */
export function betweenOf(all: readonly Likely[], out: (gear: Feed) => number): Between {
  const sorted = all
    .map(({ gear, weight }) => ({ value: out(gear), weight }))
    .toSorted((a, b) => a.value - b.value);
  const whole = sorted.reduce((sum, { weight }) => sum + weight, 0);
  const at = (part: Probability): number => {
    let left = part * whole;
    const found = sorted.find(({ weight }) => {
      left -= weight;
      return left <= 0;
    });
    return (found ?? sorted.at(-1))?.value ?? 0;
  };
  return { value: at(0.5), low: at(0.1), high: at(0.9) };
}

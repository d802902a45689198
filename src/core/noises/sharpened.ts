import type { Noticed } from "#core/checks/finding.ts";
import { hissOf, withKnobs } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import type { Between } from "#core/level/spread.ts";
import type { Feed, Programme } from "#core/level/stages.ts";
import { type Reckoned, reckoned, type Way } from "#core/level/way.ts";
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

/** What there is along a way; the hiss by the gear that goes with what was noticed of it, where something was. */
export function sharpened(way: Way, gear: readonly Likely[], programme: Programme): Reckoned {
  const plain = reckoned(way, programme);
  if (gear.length === 0) return plain;
  const knobs = way.feed.stages.map(({ knob }) => knob);
  const hiss = betweenOf(gear, (one) => hissOf(atEars(withKnobs(one, knobs), programme)));
  return { ...plain, hiss };
}

import type { Noise, Trial } from "#core/checks/noise.ts";
import { answersTo, trialKey } from "#core/checks/noise.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { type ByCause, byCause } from "./by-cause.ts";
import { unlisted } from "./cause.ts";
import { crackleWorlds } from "./crackle.ts";
import { distortionWorlds } from "./distortion.ts";
import { hissWorlds } from "./hiss.ts";
import { humWorlds } from "./hum.ts";
import { trialsFor } from "./on-offer.ts";
import { type Way, wayTo } from "./way.ts";
import type { World } from "./world.ts";

/** All that may make a noise at a position, and what may be tried. */
export interface Worlds {
  readonly way: Way;
  readonly causes: readonly ByCause[];
  readonly trials: readonly Trial[];
}

const make: Readonly<Record<Noise, (way: Way) => readonly World[]>> = {
  hiss: hissWorlds,
  hum: humWorlds,
  crackle: crackleWorlds,
  distortion: distortionWorlds,
};

/** How much is on no list. Common practice, no source. */
const offTheList = 0.04;

const known = new WeakMap<BuiltRig, Map<string, Worlds | undefined>>();

/** The worlds of a noise at a position, worked out once for each rig; nothing where nobody listens or nothing feeds it. */
export function worldsAt(rig: BuiltRig, position: string, noise: Noise): Worlds | undefined {
  const found = known.get(rig) ?? new Map<string, Worlds | undefined>();
  known.set(rig, found);
  const key = `${noise} / ${position}`;
  if (!found.has(key)) found.set(key, newWorlds(rig, position, noise));
  return found.get(key);
}

function newWorlds(rig: BuiltRig, position: string, noise: Noise): Worlds | undefined {
  const way = wayTo(rig, position);
  if (way === undefined) return undefined;
  const worlds = make[noise](way).map(remembering);
  const all = worlds.reduce((sum, { weight }) => sum + weight, 0);
  const trials = trialsFor(way, noise);
  return { way, causes: byCause([...worlds, anything(all * offTheList)], trials), trials };
}

/** Something that is on no list may answer anything. */
const anything = (weight: number): World => ({
  cause: unlisted,
  weight,
  meant: (trial) => {
    const { length } = answersTo(trial.try);
    return new Float64Array(length).fill(1 / length);
  },
});

/** Each trial is worked out once. */
function remembering(world: World): World {
  const chances = new Map<string, Float64Array>();
  const meant = (trial: Trial): Float64Array => {
    const key = trialKey(trial);
    const found = chances.get(key) ?? world.meant(trial);
    chances.set(key, found);
    return found;
  };
  return { ...world, meant };
}

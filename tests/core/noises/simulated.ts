import type { Noticed } from "#core/checks/finding.ts";
import { answersTo, type Noise, type Trial } from "#core/checks/noise.ts";
import { slip } from "#core/checks/slips.ts";
import { type Cause, causeKey } from "#core/noises/cause.ts";
import { type Hunt, huntAt } from "#core/noises/hunt.ts";
import type { World } from "#core/noises/world.ts";
import { worldsAt } from "#core/noises/worlds.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";

import { starts } from "#core/rig/starts.ts";
import type { Random } from "#core/units/random.ts";
import { starts as words } from "#ui/words/english/starts.ts";

/** Every rig to begin with, but for the one that is drawn by hand. */
export const startRigs: readonly (readonly [name: string, rig: BuiltRig])[] = starts
  .filter(({ key }) => key !== "draw your own")
  .map(({ key, make }) => [key, build(make(words))] as const);

/** Whoever sits last. */
export const lastOf = ({ positions }: BuiltRig): string => positions.at(-1)?.id ?? "";

/** One of some, by their weights. */
export function drawnOne<One extends { readonly weight: number }>(
  some: readonly One[],
  random: Random,
): One {
  let left = random() * some.reduce((sum, { weight }) => sum + weight, 0);
  const found = some.find(({ weight }) => {
    left -= weight;
    return left < 0;
  });
  const one = found ?? some.at(-1);
  if (one === undefined) throw new Error("nothing to draw from");
  return one;
}

/** Somebody who notices in a world what it makes likely, the same every time, and who slips now and then. */
export function listenerIn(world: World, random: Random): (trial: Trial) => string {
  const meant = new Map<string, string>();
  return (trial) => {
    const answers = answersTo(trial.try);
    const key = JSON.stringify(trial);
    const known = meant.get(key) ?? pick(answers, world.meant(trial), random);
    meant.set(key, known);
    return random() < slip ? (answers[Math.floor(random() * answers.length)] ?? known) : known;
  };
}

function pick(answers: readonly string[], chances: Float64Array, random: Random): string {
  let left = random();
  const at = chances.findIndex((p) => {
    left -= p;
    return left < 0;
  });
  return answers[at < 0 ? answers.length - 1 : at] ?? "";
}

export const noticed = (
  position: string,
  noise: Noise,
  trial: Trial,
  given: readonly string[],
): Noticed => ({ asked: { check: "noise", position, noise, trial }, results: [given] });

/** A hunt to its end: everything that is asked for is answered. */
export function hunted(
  rig: BuiltRig,
  position: string,
  noise: Noise,
  answer: (trial: Trial) => string,
): { readonly hunt: Hunt; readonly findings: readonly Noticed[] } {
  const findings: Noticed[] = [];
  for (;;) {
    const hunt = huntAt(rig, position, noise, findings);
    if (hunt === undefined) throw new Error(`nothing feeds ${position}`);
    if (hunt.next === undefined || findings.length > 40) return { hunt, findings };
    const { trial } = hunt.next;
    findings.push(noticed(position, noise, trial, [answer(trial)]));
  }
}

/** Every world of a noise at a position but the one that is on no list. */
export const listedWorlds = (rig: BuiltRig, position: string, noise: Noise): readonly World[] =>
  (worldsAt(rig, position, noise)?.causes ?? [])
    .filter(({ cause }) => cause.cause !== "something else")
    .flatMap(({ worlds }) => worlds);

export const isNamedFirst = ({ suspects: [first] }: Hunt, cause: Cause): boolean =>
  first?.causes.some((one) => causeKey(one) === causeKey(cause)) === true;

import type { Noticed } from "#core/checks/finding.ts";
import { answersTo, type Noise, type Trial, trialKey, trialSeconds } from "#core/checks/noise.ts";
import { given, slip } from "#core/checks/slips.ts";
import { information, type Prospect } from "#core/inference/information.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { groupedBy } from "#core/units/grouped.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import { areAlike } from "./by-cause.ts";
import { type Cause, unlisted } from "./cause.ts";
import { likelihoodOf, meantNext, type Tried, triedIn } from "./tried.ts";
import type { World } from "./world.ts";
import { type Worlds, worldsAt } from "./worlds.ts";

/** Causes that no trial here tells apart, the likeliest first, and how likely one of them is. */
interface SuspectedNoise {
  readonly causes: readonly Cause[];
  readonly probability: Probability;
}

/** What is tried next, and why: what it tells, for its seconds. */
export interface NextTrial {
  readonly trial: Trial;
  readonly bits: number;
  readonly seconds: Seconds;
}

/** Where a noise at a position comes in, as far as it is known. */
export interface Hunt {
  readonly position: string;
  readonly noise: Noise;
  readonly suspects: readonly SuspectedNoise[];
  /** Nothing once the first suspect is sure enough, or no trial tells enough. */
  readonly next: NextTrial | undefined;
  readonly sure: boolean;
  /** Everything that was tried. */
  readonly tried: readonly Tried[];
}

/** Where a hunt ends. */
const sureNoise: Probability = 0.9;
/** A trial that tells less is not worth a hand. */
const worth = 0.02;
/** Asking again finds slips and nothing else; of what nobody could tell not even these. */
const mostAsked = 3;

/** Where a noise comes in, from what was noticed while things were tried, in any order. Nothing where nobody listens or nothing feeds it. */
export function huntAt(
  rig: BuiltRig,
  position: string,
  noise: Noise,
  findings: readonly Noticed[],
): Hunt | undefined {
  const all = worldsAt(rig, position, noise);
  if (all === undefined) return undefined;
  const tried = triedIn(
    findings.filter(({ asked }) => asked.position === position && asked.noise === noise),
  );
  const believed = believedIn(all, tried);
  const suspects = believed.map(({ causes, probability }) => ({ causes, probability }));
  const [first] = suspects;
  const listed = first?.causes[0]?.cause !== unlisted.cause;
  const sure = listed && (first?.probability ?? 0) >= sureNoise;
  const next = sure ? undefined : nextOf(all, believed, tried);
  return { position, noise, suspects, next, sure, tried: [...tried.values()] };
}

/** The worlds of some causes that are told apart by nothing, with how likely each is now. */
interface Believed extends SuspectedNoise {
  readonly worlds: readonly Weighed[];
}

interface Weighed {
  readonly world: World;
  readonly probability: Probability;
}

const sumOf = (worlds: readonly Weighed[]): Probability =>
  worlds.reduce((sum, { probability }) => sum + probability, 0);

/** Every group of causes, the likeliest first, and in each the likeliest first. */
function believedIn(
  { causes, trials }: Worlds,
  tried: ReadonlyMap<string, Tried>,
): readonly Believed[] {
  const weighed = causes.map((one) => ({
    ...one,
    now: one.worlds.map((world) => world.weight * likelihoodOf(world, tried.values())),
  }));
  const all = weighed.reduce((sum, { now }) => sum + now.reduce((part, one) => part + one, 0), 0);
  const here = trials.filter((trial) => tried.get(trialKey(trial))?.cannot !== true);
  const groups = groupedBy(weighed, (one, other) => areAlike(one, other, here));
  return groups
    .map((group) => {
      const members = group
        .map(({ cause, worlds, now }) => ({
          cause,
          worlds: worlds.map((world, at) => ({ world, probability: (now[at] ?? 0) / all })),
        }))
        .toSorted((a, b) => sumOf(b.worlds) - sumOf(a.worlds));
      const worlds = members.flatMap((one) => one.worlds);
      return { causes: members.map(({ cause }) => cause), worlds, probability: sumOf(worlds) };
    })
    .toSorted((a, b) => b.probability - a.probability);
}

/** What tells most of which group it is, for its seconds. */
function nextOf(
  { trials }: Worlds,
  believed: readonly Believed[],
  tried: ReadonlyMap<string, Tried>,
): NextTrial | undefined {
  const open = trials.filter((trial) => {
    const before = tried.get(trialKey(trial));
    return before === undefined || (!before.cannot && !before.untold && before.times < mostAsked);
  });
  return open
    .map((trial) => {
      const before = tried.get(trialKey(trial));
      const prospects = believed.map((group) => prospectOf(group, trial, before));
      return { trial, bits: information(prospects), seconds: trialSeconds[trial.try] };
    })
    .filter(({ bits }) => bits >= worth)
    .toSorted((a, b) => b.bits / b.seconds - a.bits / a.seconds)[0];
}

/** What would be answered, if it is one of a group. */
function prospectOf(
  { worlds, probability }: Believed,
  trial: Trial,
  before: Tried | undefined,
): Prospect {
  const answers = new Float64Array(answersTo(trial.try).length);
  for (const one of worlds)
    for (const [at, p] of given(meantNext(one.world, trial, before), slip).entries())
      answers[at] = (answers[at] ?? 0) + p * (one.probability / Math.max(probability, 1e-300));
  return { probability, answers };
}

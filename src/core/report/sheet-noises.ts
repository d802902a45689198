import { type Finding, type Happening, isNoticed, type Noticed } from "#core/checks/finding.ts";
import { type Noise, noises } from "#core/checks/noise.ts";
import type { Cause } from "#core/noises/cause.ts";
import { type Hunt, huntAt } from "#core/noises/hunt.ts";
import type { Move } from "#core/rig/moves.ts";
import { build } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";
import { huntIn, spokenOf, tellsSomething } from "#core/session/noises.ts";
import type { Probability } from "#core/units/units.ts";
import { positionOf } from "./sheet-seats.ts";

/** A noise that was looked for at a position, or complained of there, and what came of it. */
export interface HuntedNoise {
  readonly position: string;
  readonly noise: Noise;
  /** Where it comes in; nothing where it was complained of and nothing was tried that told anything. */
  readonly from: NoiseFrom | undefined;
  /** When it was spoken of last, milliseconds since 1970. */
  readonly at: number;
  /** What a hand did on the way since: of the way as it is now nothing of this is known. */
  readonly since: readonly Move[];
  /** It was looked for again after that. */
  readonly again: boolean;
}

/** Where a noise comes in, as far as it is known. */
interface NoiseFrom {
  readonly cause: Cause;
  /** How many others nothing that was on offer tells from it. */
  readonly alike: number;
  readonly probability: Probability;
  readonly sure: boolean;
}

/** Every noise that a session speaks of, position by position, and each anew once a hand changed something on its way; gives way after each position. */
export function* huntedIn(derived: Derived): Generator<void, readonly HuntedNoise[], void> {
  const hunted: HuntedNoise[] = [];
  for (const { id } of derived.rig.positions) {
    for (const noise of noises) hunted.push(...huntsOf(derived, id, noise));
    yield;
  }
  return hunted;
}

/** What was said of one noise at a position while its way stayed as it was. */
interface Spoken {
  readonly channel: number;
  /** How many moves were made before the last of it. */
  readonly epoch: number;
  readonly at: number;
  readonly noticed: readonly Noticed[];
}

function huntsOf(derived: Derived, position: string, noise: Noise): readonly HuntedNoise[] {
  const spoken = spokenAt(derived, position, noise);
  const looked = spoken.filter(({ noticed }) => noticed.some(tellsSomething));
  // Of complaints that nobody looked into the last says all there is.
  const told = looked.length > 0 ? looked : spoken.slice(-1);
  return told.map((one, which) => ({
    position,
    noise,
    from: one.noticed.some(tellsSomething)
      ? fromOf(huntOf(derived, position, noise, one))
      : undefined,
    at: one.at,
    since: movesSince(derived, position, one),
    again: which < told.length - 1,
  }));
}

/** All that was said of it, in stretches between moves on its way, in the order of their ends. */
function spokenAt({ told, evidence }: Derived, position: string, noise: Noise): readonly Spoken[] {
  const stretches = new Map<number, Spoken>();
  let epoch = 0;
  for (const { entry, happening } of told) {
    if (happening.kind === "move") epoch++;
    const finding = findingOf(happening, position, noise);
    if (finding === undefined) continue;
    const channel = evidence.era.channelAt(position, epoch);
    const before = stretches.get(channel)?.noticed ?? [];
    const noticed = isNoticed(finding) ? [...before, finding] : before;
    stretches.delete(channel);
    stretches.set(channel, { channel, epoch, at: entry.at, noticed });
  }
  return [...stretches.values()];
}

/** A finding that speaks of a noise at a position. */
function findingOf(happening: Happening, position: string, noise: Noise): Finding | undefined {
  if (happening.kind !== "finding" || positionOf(happening) !== position) return undefined;
  return spokenOf(happening.finding).includes(noise) ? happening.finding : undefined;
}

/** Where it came in, of the rig as it was then. */
function huntOf(
  derived: Derived,
  position: string,
  noise: Noise,
  { channel, epoch, noticed }: Spoken,
): Hunt | undefined {
  const { evidence, rig } = derived;
  if (channel === evidence.nowAt(position)) return huntIn(derived, position, noise);
  return huntAt(build(evidence.era.course.rigs[epoch] ?? rig), position, noise, noticed);
}

function fromOf(hunt: Hunt | undefined): NoiseFrom | undefined {
  const [first] = hunt?.suspects ?? [];
  const [cause] = first?.causes ?? [];
  if (hunt === undefined || first === undefined || cause === undefined) return undefined;
  const { probability, causes } = first;
  return { cause, alike: causes.length - 1, probability, sure: hunt.sure };
}

/** The moves that changed the way to a position since, where it is another by now. */
function movesSince(
  { evidence: { era, nowAt } }: Derived,
  position: string,
  { channel, epoch }: Spoken,
): readonly Move[] {
  if (channel === nowAt(position)) return [];
  const at = (move: number) => era.channelAt(position, move);
  return era.course.moves.filter((_, move) => move >= epoch && at(move) !== at(move + 1));
}

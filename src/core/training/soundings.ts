import { behaviourAt, ears } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf, type Gains, signed } from "#core/rig/effect.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { stepsTo } from "#core/rig/steps.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { groupedBy } from "#core/units/grouped.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";

/** What one or more faults sound like at a position: one answer of the round. */
export interface Sounding {
  /** The id of the likeliest of its faults: what answers and the score are filed under. */
  readonly id: string;
  /** What it does to the sides, by the words of `effects`. */
  readonly effect: Effect;
  /** The likeliest fault's, against a healthy chain. */
  readonly gains: Gains;
  /** How much later the right side comes than in a healthy chain; of what only comes late, `effect` is 'straight'. */
  readonly late: Seconds;
  /** All faults that sound like this, the likeliest first. Never empty. */
  readonly faults: readonly [RigFault, ...RigFault[]];
}

/** About the least difference anybody notices (handbook, section 6). */
const noticed: Decibels = 1;
/** A difference that a picture shows, and that moves a sound off its place. */
const clear: Decibels = 3;
/** Weaker than this beside a healthy side, a gain is lost in the programme (common practice, no source). */
const lost: Decibels = -24;
/** The least lateness that counts, a seventh of what pulls a sound over to one side (handbook, section 5; common practice, no source). */
const behind: Seconds = 0.0001;

/** What is compared by ear. */
type Heard = Pick<Sounding, "gains" | "late">;

/**
 * Whether two are one to the ear: all four gains within a decibel, and as late. Everything upside down is the same to it, so
 * one side inverted is the other side inverted.
 */
export const alike = (a: Heard, b: Heard): boolean => within(noticed, a, b);

/** Whether nobody need take one for the other: a fair choice. */
export const toldApart = (a: Heard, b: Heard): boolean => !within(clear, a, b);

const within = (difference: Decibels, a: Heard, b: Heard): boolean =>
  Math.abs(a.late - b.late) < behind &&
  [1, -1].some((sign) =>
    a.gains.every((gain, at) => close(difference, gain, sign * (b.gains[at] ?? 0))),
  );

function close(difference: Decibels, a: number, b: number): boolean {
  const [one, other] = [toDecibels(Math.abs(a)), toDecibels(Math.abs(b))];
  if (one < lost && other < lost) return true;
  return a * b > 0 && Math.abs(one - other) <= difference;
}

/**
 * What can be heard to go wrong at a position, the likeliest first. Faults that sound alike are one, so are those between which others
 * make a bridge: two soundings are always told apart. Left out are people (a round is about gear), what comes and goes, and what changes
 * nothing that a picture shows.
 */
export function soundingsAt(rig: BuiltRig, position: string): readonly Sounding[] {
  const hear = hearing(rig, position);
  const way = stepsTo(rig, position);
  const heard = rigFaults(rig)
    .filter((fault) => isGear(rig, fault) && way.some((step) => step.owns(fault)))
    .map((fault) => ({ fault, ...hear(fault) }))
    .filter(isHeard)
    .sort((a, b) => b.fault.weight - a.fault.weight);
  return groupedBy(heard, alike).map(([first, ...rest]) => ({
    id: first.fault.id,
    effect: effectOf(first.gains),
    gains: first.gains,
    late: first.late,
    faults: [first.fault, ...rest.map(({ fault }) => fault)],
  }));
}

/** What a fault sounds like at a position. */
function hearing(rig: BuiltRig, position: string): (fault: RigFault) => Heard {
  const healthy = behaviourAt(rig, position, []);
  const largest = Math.max(...ears(healthy).flat().map(size));
  return (fault) => {
    const behaviour = behaviourAt(rig, position, [fault]);
    return { gains: signed(ears(behaviour), largest), late: behaviour.late - healthy.late };
  };
}

const isGear = (rig: BuiltRig, { part, name, comesAndGoes }: RigFault): boolean =>
  comesAndGoes !== true && (rig.part(part).family !== "person" || name === "worn backwards");

const isHeard = ({ gains, late }: Heard): boolean =>
  effectOf(gains) !== "straight" || Math.abs(late) >= behind;

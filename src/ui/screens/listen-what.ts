import type { EarsAt } from "#core/hearing/response.ts";
import { chainTo, type Link } from "#core/rig/chain.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { earsAt } from "#core/rig/ears-at.ts";
import { type Effect, effectOf, signed } from "#core/rig/effect.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { type Sounding, soundingsAt } from "#core/training/soundings.ts";
import { real, size } from "#core/units/complex.ts";

/** A rig to be listened to, at its first position. */
export interface Heard {
  readonly rig: BuiltRig;
  readonly position: string;
  readonly links: readonly Link[];
  readonly faults: readonly RigFault[];
  /** What it does with nothing broken, where that is not straight. */
  readonly own: Effect | undefined;
  /** What can be heard to go wrong, faults that sound alike together. */
  readonly soundings: readonly Sounding[];
}

/** Takes a fraction of a second for a table of five. */
export function heardIn(drawn: Rig): Heard {
  const rig = build(drawn);
  const position = drawn.positions[0]?.id ?? "";
  const faults = rigFaults(rig).filter(({ comesAndGoes }) => !comesAndGoes);
  return {
    rig,
    position,
    links: chainTo(rig, position),
    faults,
    own: ownEffect(rig, position),
    soundings: soundingsAt(rig, position),
  };
}

function ownEffect(rig: BuiltRig, position: string): Effect | undefined {
  const ears = earMatrix(rig, position, []);
  const effect = effectOf(signed(ears, Math.max(...ears.flat().map(size), 1e-3)));
  return effect === "straight" ? undefined : effect;
}

/** What can be heard to go wrong at one part of the way: of faults there that sound alike, the likeliest. */
export const faultsAt = (
  { soundings }: Heard,
  part: string,
): readonly { readonly fault: RigFault; readonly sounding: Sounding }[] =>
  soundings.flatMap((sounding) => {
    const fault = sounding.faults.find((one) => one.part === part);
    return fault === undefined ? [] : [{ fault, sounding }];
  });

/** The parts of the way where something can be heard to go wrong, from the source. */
export const placesIn = (heard: Heard): readonly string[] =>
  heard.links.map(({ part }) => part).filter((part) => faultsAt(heard, part).length > 0);

/** The two chains to compare: without and with the fault; for a rig as it is, a straight feed as loud as it and the rig. */
export function chainsFor({ rig, position }: Heard, fault: RigFault | undefined) {
  const own = earsAt(rig, position, []);
  if (fault !== undefined) return { healthy: own, faulty: earsAt(rig, position, [fault]) };
  const most = Math.max(...earMatrix(rig, position, []).flat().map(size), 1e-3);
  const straight: EarsAt = () => [
    [real(most), real(0)],
    [real(0), real(most)],
  ];
  return { healthy: straight, faulty: own };
}

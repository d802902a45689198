import type { EarsAt } from "#core/hearing/response.ts";
import { chainTo, type Link } from "#core/rig/chain.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { earsAt } from "#core/rig/ears-at.ts";
import { type Effect, effectOf, signed } from "#core/rig/effect.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { real, size } from "#core/units/complex.ts";
import { effectAt } from "#ui/parts/fault-effect.ts";

/** A rig to be listened to, at its first position. */
export interface Heard {
  readonly rig: BuiltRig;
  readonly position: string;
  readonly links: readonly Link[];
  readonly faults: readonly RigFault[];
  /** What it does with nothing broken, where that is not straight. */
  readonly own: Effect | undefined;
}

/** What comes and goes sounds like its steady twin while it lasts; who takes left for right hears nothing else. */
export function heardIn(drawn: Rig): Heard {
  const rig = build(drawn);
  const position = drawn.positions[0]?.id ?? "";
  const faults = rigFaults(rig).filter(
    ({ comesAndGoes, name }) => !comesAndGoes && name !== "mirrors left and right",
  );
  return {
    rig,
    position,
    links: chainTo(rig, position),
    faults,
    own: ownEffect(rig, position),
  };
}

function ownEffect(rig: BuiltRig, position: string): Effect | undefined {
  const ears = earMatrix(rig, position, []);
  const effect = effectOf(signed(ears, Math.max(...ears.flat().map(size), 1e-3)));
  return effect === "straight" ? undefined : effect;
}

/** Everything that can be wrong at one part of the way, with what it does to the lanes at 1 kHz; some is heard in the bass or treble alone. */
export const faultsAt = (
  { rig, position, faults }: Heard,
  part: string,
): readonly { readonly fault: RigFault; readonly effect: Effect }[] =>
  faults
    .filter((fault) => fault.part === part)
    .map((fault) => ({ fault, effect: effectAt(rig, position, fault) }));

/** The parts of the way where something can be wrong, from the source. */
export const placesIn = ({ links, faults }: Heard): readonly string[] =>
  links.map(({ part }) => part).filter((id) => faults.some(({ part }) => part === id));

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

import type { PartKind } from "#core/parts/catalogue.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { Settings } from "#core/parts/kind.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { midband } from "#core/rig/midband.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Decibels, Hertz } from "#core/units/units.ts";

const worn = "worn";
export const seat = "position 1";

/** One set straight into a laptop, each with its settings. */
export const wornOn = (kind: PartKind, settings: Settings = {}, laptop: Settings = {}): BuiltRig =>
  build({
    name: kind,
    parts: [
      { id: "laptop", kind: "laptop", settings: laptop },
      { id: worn, kind, settings },
    ],
    plugged: [{ part: worn, plug: "plug", into: "laptop", socket: "phones" }],
    positions: [{ id: seat, name: "1 one", wears: worn }],
  });

/** Faults of the set by name. Throws on one that it lacks. */
export const faultsOf = (rig: BuiltRig, ...names: readonly FaultName[]): readonly RigFault[] =>
  names.map((name) => {
    const fault = rigFaults(rig).find((one) => one.part === worn && one.name === name);
    if (fault === undefined) throw new Error(`the set cannot have the fault ${name}`);
    return fault;
  });

/** What arrives at the ears under faults of the set. */
export const heard = (rig: BuiltRig, names: readonly FaultName[] = [], at: Hertz = midband) =>
  earMatrix(rig, seat, faultsOf(rig, ...names), at);

/** Decibels that each ear lacks of its own side, against the healthy set. */
export function lost(rig: BuiltRig, name: FaultName, at: Hertz = midband): readonly Decibels[] {
  const own = (matrix: Matrix) => matrix.map((row, ear) => size(row[ear] ?? { re: 0, im: 0 }));
  const healthy = own(heard(rig, [], at));
  return own(heard(rig, [name], at)).map((level, ear) =>
    toDecibels(level / (healthy[ear] ?? Number.NaN)),
  );
}

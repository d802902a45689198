import type { Reading } from "#core/checks/finding.ts";
import { type Circuit, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { edited } from "#core/rig/edited.ts";
import { joined, placed } from "#core/rig/placed.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { size, subtract } from "#core/units/complex.ts";
import type { Ohms, Probability } from "#core/units/units.ts";

/** What the meter's own leads and a finger's press add, and how far a reading may be out beside that. Common practice, no source. */
const least: Ohms = 0.3;
const share = 0.1;
/** Above this a meter shows an open circuit (common practice, no source). */
const range: Ohms = 1e6;
/** How often a probe misses its contact, or the wrong figure is written down. Common practice, no source. */
const misread: Probability = 0.02;

/** How likely a reading is under some of the part's faults; nothing where the part or a contact is not there. */
export function chanceOfReading(
  rig: BuiltRig,
  { asked: { part, from, to }, ohms }: Reading,
): ((faults: readonly RigFault[]) => Probability) | undefined {
  const contacts = new Set(bodyOf(rig, part).flatMap(({ a, b }) => [a, b]));
  const [a, b] = [joined(part, from), joined(part, to)];
  if (!contacts.has(a) || !contacts.has(b) || a === b) return undefined;
  const steady = (faults: readonly RigFault[]) =>
    chance(ohmsBetween(edited(bodyOf(rig, part), faults), a, b), ohms);
  return (faults) => changing(faults, steady);
}

/** What a meter would read under some of the part's faults. */
export const ohmsUnder = (
  rig: BuiltRig,
  { asked: { part, from, to } }: Reading,
  faults: readonly RigFault[],
): Ohms => ohmsBetween(edited(bodyOf(rig, part), faults), joined(part, from), joined(part, to));

const bodyOf = (rig: BuiltRig, part: string): Circuit =>
  rig.parts.some(({ id }) => id === part) ? placed(part, rig.part(part).body) : [];

/** Half of the time each for what comes and goes. */
function changing(
  faults: readonly RigFault[],
  steady: (faults: readonly RigFault[]) => Probability,
): Probability {
  const loose = faults.find(({ comesAndGoes }) => comesAndGoes);
  if (loose === undefined) return steady(faults);
  const rest = faults.filter((fault) => fault !== loose);
  return (changing(rest, steady) + changing(rest, (others) => steady([loose, ...others]))) / 2;
}

/** The resistance between two nodes of a circuit that stands alone, from what is left of one volt behind one ohm. */
function ohmsBetween(circuit: Circuit, a: string, b: string): Ohms {
  const nodes = [...new Set(circuit.flatMap((element) => [element.a, element.b]))];
  const held: Circuit = nodes.map((node) => ({
    kind: "resistor",
    name: `${node} held`,
    a: node,
    b: earth,
    ohms: 1e12,
  }));
  const source: Circuit = [{ kind: "source", name: "meter", a, b, ohms: 1, drive: { meter: 1 } }];
  const [volts] = solve([...circuit, ...held, ...source], 0, ["meter"]);
  if (volts === undefined) throw new Error("the meter drives nothing");
  const left = size(subtract(volts(a), volts(b)));
  return left / Math.max(1 - left, 1e-12);
}

function chance(predicted: Ohms, ohms: Ohms | undefined): Probability {
  const open = predicted >= range;
  if (ohms === undefined || ohms >= range) return open ? 1 - misread : misread;
  if (open) return misread;
  const spread = (of: Ohms) => least + share * of;
  const miss = (ohms - predicted) / spread(predicted);
  const density = (spread(ohms) / spread(predicted)) * Math.exp((-miss * miss) / 2);
  return misread + (1 - misread) * Math.min(1, density);
}

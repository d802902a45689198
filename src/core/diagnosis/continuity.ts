import type { Bent, Reading } from "#core/checks/finding.ts";
import { joined } from "#core/rig/placed.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Ohms, Probability } from "#core/units/units.ts";
import { meterOn } from "./meter.ts";

/** What the meter's own leads and a finger's press add, and how far a reading may be out beside that. Common practice, no source. */
const least: Ohms = 0.3;
const share = 0.1;
/** Above this a meter shows an open circuit (common practice, no source). */
const range: Ohms = 1e6;
/** How often a probe misses its contact, or the wrong figure is written down. Common practice, no source. */
export const misread: Probability = 0.02;
/** How often bending a lead moves a contact that comes and goes. Common practice, no source. */
const moves: Probability = 0.9;

/** Between what spreads the chance of a reading lies. */
const spreadOf = (ohms: Ohms): Ohms => least + share * ohms;

/** Whether a meter shows an open circuit. */
export const showsOpen = (ohms: Ohms): boolean => ohms >= range;

/** How likely a reading is under some of the part's faults; nothing where the part or a contact is not there. */
export function chanceOfReading(
  rig: BuiltRig,
  { asked: { part, from, to }, ohms, bent }: Reading,
): ((faults: readonly RigFault[]) => Probability) | undefined {
  const meter = meterOn(rig, part);
  const [a, b] = [joined(part, from), joined(part, to)];
  if (meter === undefined || !meter.nodes.has(a) || !meter.nodes.has(b) || a === b)
    return undefined;
  return (faults) => {
    const shown = shownTo(faults, (set) => meter.under(set)(a, b));
    const read = shown.reduce((sum, one) => sum + chance(one, ohms), 0) / shown.length;
    return bent === undefined ? read : read * chanceOfBending(shown, bent);
  };
}

/** What a meter would read under some of the part's faults. */
export function ohmsUnder(
  rig: BuiltRig,
  { asked: { part, from, to } }: Reading,
  faults: readonly RigFault[],
): Ohms {
  const meter = meterOn(rig, part);
  if (meter === undefined) throw new Error(`the rig has no part named ${part}`);
  return meter.under(faults)(joined(part, from), joined(part, to));
}

/** Everything a meter may show, each as likely: half of the time each for what comes and goes. */
export function shownTo(
  faults: readonly RigFault[],
  read: (faults: readonly RigFault[]) => Ohms,
): readonly Ohms[] {
  const loose = faults.find(({ comesAndGoes }) => comesAndGoes);
  if (loose === undefined) return [read(faults)];
  const rest = faults.filter((fault) => fault !== loose);
  return [...shownTo(rest, read), ...shownTo(rest, (others) => read([loose, ...others]))];
}

/** How likely a meter does so while a lead is bent, by what it may show. */
export function chanceOfBending(shown: readonly Ohms[], bent: Bent): Probability {
  const changes = shown.some((one) => !isAlike(one, shown[0] ?? one)) ? moves : misread;
  return bent === "changes" ? changes : 1 - changes;
}

/** Whether a meter shows two resistances as one. */
export const isAlike = (a: Ohms, b: Ohms): boolean =>
  showsOpen(a) || showsOpen(b)
    ? showsOpen(a) === showsOpen(b)
    : Math.abs(a - b) <= 2 * Math.min(spreadOf(a), spreadOf(b));

/** A probe that slips meets nothing or the contact beside it; so many times more seldom is it a figure in between that is read wrongly. */
const seldom = 0.1;

/** How likely a figure is, or an open circuit where there is none, at a resistance. */
function chance(predicted: Ohms, ohms: Ohms | undefined): Probability {
  const open = showsOpen(predicted);
  if (ohms === undefined || showsOpen(ohms)) return open ? 1 - misread : misread;
  const slip = isAlike(ohms, 0) ? misread : seldom * misread;
  if (open) return slip;
  const miss = (ohms - predicted) / spreadOf(predicted);
  const density = (spreadOf(ohms) / spreadOf(predicted)) * Math.exp((-miss * miss) / 2);
  return slip + (1 - misread) * Math.min(1, density);
}

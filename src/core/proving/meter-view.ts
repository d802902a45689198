import { isAlike, shownTo, showsOpen } from "#core/diagnosis/continuity.ts";
import { meterOn } from "#core/diagnosis/meter.ts";
import { joined } from "#core/rig/placed.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Ohms } from "#core/units/units.ts";
import { contactsOfLead } from "./ends.ts";
import { leadId } from "./lead-rig.ts";

/** Two contacts that a meter is put to, each as `plug.contact`. */
export interface Pair {
  readonly from: string;
  readonly to: string;
}

/** What a meter would find on the lead of a rig, under any of its faults. */
export interface MeterView {
  /** Every contact, those of the first end before those of the other. */
  readonly contacts: readonly string[];
  /** Every two contacts: from end to end, and beside each other. */
  readonly pairs: readonly Pair[];
  /** What the meter may show, each as likely. */
  readonly shown: (faults: readonly RigFault[], pair: Pair) => readonly Ohms[];
  /** All that the meter could find, as a text: under two sets of faults it is the same where no reading tells them apart. */
  readonly all: (faults: readonly RigFault[]) => string;
}

const views = new WeakMap<BuiltRig, MeterView>();

/** The view of a rig's lead by a meter; what was worked out once is remembered. Throws on a rig without a lead that is to be proved. */
export function meterView(rig: BuiltRig): MeterView {
  const known = views.get(rig) ?? newView(rig);
  views.set(rig, known);
  return known;
}

function newView(rig: BuiltRig): MeterView {
  const lead = rig.parts.find(({ id }) => id === leadId);
  const meter = meterOn(rig, leadId);
  if (lead === undefined || meter === undefined)
    throw new Error(`the rig has no part named ${leadId}`);
  const contacts = contactsOfLead(lead.kind, lead.settings).map(
    ({ at, contact }) => `${at}.${contact}`,
  );
  const pairs = contacts.flatMap((from, at) => contacts.slice(at + 1).map((to) => ({ from, to })));
  const read = (faults: readonly RigFault[], { from, to }: Pair) =>
    shownTo(faults, (set) => meter.under(set)(joined(leadId, from), joined(leadId, to)));
  const found = new Map<string, Found>();
  const under = (faults: readonly RigFault[]): Found => {
    const own = faults.filter(({ part }) => part === leadId);
    const key = own.map(({ id }) => id).join("\n");
    const known = found.get(key) ?? foundBy(pairs, (pair) => read(own, pair));
    found.set(key, known);
    return known;
  };
  return {
    contacts,
    pairs,
    shown: (faults, pair) => under(faults).shown.get(pair) ?? read(faults, pair),
    all: (faults) => under(faults).text,
  };
}

/** All that a meter would find under some faults. */
interface Found {
  readonly shown: ReadonlyMap<Pair, readonly Ohms[]>;
  readonly text: string;
}

function foundBy(pairs: readonly Pair[], read: (pair: Pair) => readonly Ohms[]): Found {
  const shown = new Map(pairs.map((pair) => [pair, read(pair)]));
  return {
    shown,
    text: [...shown.values()].map((ohms) => kindsText(ohms.map(kindOfOhms))).join(),
  };
}

const kindsText = (kinds: readonly number[]): string =>
  [...new Set(kinds)].sort((a, b) => a - b).join("/");

/** What a meter shows as an open circuit. */
const open = -1;

/** So many of the meter's spreads are one kind. */
const kind = 4.5;

/**
 * A number for every resistance that a meter tells from the next. Its spread is a third of an ohm and a tenth (`continuity.ts`), so that equal
 * steps of this logarithm are equally many spreads. Up to 1.7 Ω is one kind: all that a healthy lead has.
 */
export const kindOfOhms = (ohms: Ohms): number =>
  showsOpen(ohms) ? open : Math.floor((10 * Math.log1p(ohms / 3)) / kind);

/** Whether a contact reaches another, however well. */
export const isJoined = (shown: readonly Ohms[]): boolean => shown.every((one) => !showsOpen(one));

/** Whether a meter would show a fault at two contacts. */
export function shows(view: MeterView, fault: RigFault, pair: Pair): boolean {
  const kinds = new Set(view.shown([], pair).map(kindOfOhms));
  const shown = view.shown([fault], pair);
  return isLoose(shown) || shown.some((one) => !kinds.has(kindOfOhms(one)));
}

/** Whether two readings are of the same two contacts, whichever probe on which. */
export const isSamePair = (one: Pair, other: Pair): boolean =>
  (one.from === other.from && one.to === other.to) ||
  (one.from === other.to && one.to === other.from);

/** Whether something changes in what a meter shows while the lead is bent. */
export const isLoose = (shown: readonly Ohms[]): boolean =>
  shown.some((one) => !isAlike(one, shown[0] ?? one));

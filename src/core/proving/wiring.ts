import { isAlike, showsOpen } from "#core/diagnosis/continuity.ts";
import { type Between, meterOn } from "#core/diagnosis/meter.ts";
import { joined } from "#core/rig/placed.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Ohms } from "#core/units/units.ts";
import { leadId } from "./lead-rig.ts";
import { isLoose, meterView } from "./meter-view.ts";

/** How a wire is, against how it was meant to be. 'Joined': no wire was meant there. */
const wireStates = [
  "as intended",
  "resistive",
  "comes and goes",
  "open",
  "exchanged",
  "joined",
] as const;
export type WireState = (typeof wireStates)[number];

/** From one contact to another, each as `plug.contact`. */
export interface Wire {
  readonly from: string;
  readonly to: string;
  readonly state: WireState;
  /** From end to end, where it conducts. */
  readonly ohms?: Ohms;
  /** Exchanged: what `to` is joined to in place of `from`. */
  readonly instead?: string;
}

/** Two contacts that conduct worse than this are not joined on purpose. */
const wire: Ohms = 1000;

/**
 * How the lead of a rig is wired under some faults, against how it was meant to be: every wire that was meant, from the first end to each
 * contact that it serves, and then what is joined and should not be.
 */
export function wiringOf(rig: BuiltRig, faults: readonly RigFault[]): readonly Wire[] {
  const { contacts } = meterView(rig);
  const meter = meterOn(rig, leadId);
  if (meter === undefined) throw new Error(`the rig has no part named ${leadId}`);
  const own = faults.filter(({ part }) => part === leadId);
  const between = (set: readonly RigFault[]): Between => {
    const read = meter.under(set);
    return (a, b) => read(joined(leadId, a), joined(leadId, b));
  };
  const seen: Seen = {
    contacts,
    meant: between([]),
    now: between(own),
    atBest: between(own.filter(({ comesAndGoes }) => !comesAndGoes)),
  };
  const meant = intended(seen);
  const wires = meant.map((one) => wireOf(seen, one));
  return [...wires, ...strays(seen, wires)];
}

interface Seen {
  readonly contacts: readonly string[];
  readonly meant: Between;
  /** With everything there that comes and goes, and with nothing of it. */
  readonly now: Between;
  readonly atBest: Between;
}

/** Each contact with the first that it was meant to be joined to. */
const intended = ({ contacts, meant }: Seen): readonly (readonly [from: string, to: string])[] =>
  contacts.flatMap((to, at) => {
    const from = contacts.slice(0, at).find((one) => meant(one, to) < wire);
    return from === undefined ? [] : [[from, to] as const];
  });

function wireOf(seen: Seen, [from, to]: readonly [string, string]): Wire {
  const [meant, now, best] = [seen.meant, seen.now, seen.atBest].map((read) => read(from, to));
  if (meant === undefined || now === undefined || best === undefined) throw new Error("no reading");
  if (isLoose([now, best])) return { from, to, state: "comes and goes", ohms: best };
  if (isAlike(now, meant)) return { from, to, state: "as intended", ohms: now };
  if (!showsOpen(now)) return { from, to, state: "resistive", ohms: now };
  const instead = seen.contacts.find(
    (one) => one !== to && seen.now(one, to) < wire && seen.meant(one, to) >= wire,
  );
  return instead === undefined
    ? { from, to, state: "open" }
    : { from, to, state: "exchanged", instead, ohms: seen.now(instead, to) };
}

/** Contacts that are joined and should not be, once for each two wires: those that are as intended otherwise. */
function strays(seen: Seen, wires: readonly Wire[]): readonly Wire[] {
  const { contacts, meant, now } = seen;
  const moved = new Set(wires.flatMap(({ to, state }) => (state === "exchanged" ? [to] : [])));
  const first = (contact: string): string =>
    contacts.find((one) => one === contact || meant(one, contact) < wire) ?? contact;
  const pairs = contacts.flatMap((from, at) =>
    contacts
      .slice(at + 1)
      .filter((to) => now(from, to) < wire && meant(from, to) >= wire)
      .filter((to) => !moved.has(from) && !moved.has(to))
      .map((to): Wire => ({ from, to, state: "joined", ohms: now(from, to) })),
  );
  const key = ({ from, to }: Wire) => [from, to].map(first).sort().join(" ");
  return pairs.filter(
    (one) => !pairs.some((other) => key(other) === key(one) && (other.ohms ?? 0) < (one.ohms ?? 0)),
  );
}

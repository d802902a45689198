import type { Element } from "#core/circuit/circuit.ts";
import type { Farads, Ohms } from "#core/units/units.ts";
import { capacitor, resistor } from "./boxes.ts";
import type { Fault, Part, PartKind } from "./part.ts";
import { point } from "./part.ts";
import { type Contact, contacts, type PlugKind } from "./plugs.ts";
import { type WireOdds, type Wires, wireFaults } from "./wire-faults.ts";

/** A conductor of 3 m of thin wire, and the joint at its end. Handbook, section 5. */
export const wireOhms: Ohms = 0.252;
export const jointOhms: Ohms = 0.05;
/** Between the cores of 3 m at 100 pF a metre. Handbook, section 5. */
export const betweenCores: Farads = 300e-12;

const odds: WireOdds = { open: 15, short: 3, order: 3, dirt: 5 };

const wire = (name: string, a: string, b: string): Element =>
  resistor(name, a, b, wireOhms + jointOhms);

const wires: Wires = {
  at: "body",
  wire: (contact) => contact,
  end: (contact) => point("far", contact),
};

/** A lead of 3 m with a plug at each end, wired straight through. `near` is the end towards the source. */
function straight(kind: PartKind, plug: PlugKind, faults: readonly Fault[]): Part {
  return {
    kind,
    plugs: [
      { name: "near", kind: plug },
      { name: "far", kind: plug },
    ],
    sockets: [],
    body: [
      ...contacts.map((contact) => wire(contact, point("near", contact), point("far", contact))),
      capacitor("cores", point("far", "tip"), point("far", "ring"), betweenCores),
    ],
    takes: [],
    controls: {},
    faults,
    look: 15,
  };
}

/** Somebody took a lead with two contacts a plug. */
const twoContacts: Fault = {
  name: "lead with two contacts",
  at: "body",
  edits: [
    { edit: "plug", plug: "near", kind: "TS" },
    { edit: "plug", plug: "far", kind: "TS" },
  ],
  weight: 60,
  slot: "plugs",
  seen: true,
  repair: 60,
};

/** Tip, ring and sleeve, plug to plug: unbalanced stereo or balanced mono, by what it is plugged into. */
export const trsLead = (): Part =>
  straight("TRS lead", "TRS", [...wireFaults(wires, odds), twoContacts]);

/** Tip and sleeve, plug to plug. Its ring wire ends in the air at both plugs. */
export const tsLead = (): Part =>
  straight(
    "TS lead",
    "TS",
    wireFaults(wires, odds).filter(({ name }) => !name.includes("ring")),
  );

/** One signal to both sides: tip to tip and ring. The cure for a mono send into a stereo input. */
export function oneToBoth(): Part {
  const far = (contact: Contact) => point("far", contact);
  return {
    ...straight("one-to-both lead", "TRS", []),
    plugs: [
      { name: "near", kind: "TS" },
      { name: "far", kind: "TRS" },
    ],
    body: [
      wire("tip", point("near", "tip"), far("tip")),
      wire("ring", point("near", "tip"), far("ring")),
      wire("sleeve", point("near", "sleeve"), far("sleeve")),
    ],
    faults: wireFaults(wires, odds).filter(({ name }) => !/exchanged|turned/.test(name)),
  };
}

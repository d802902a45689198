import { type Node, open, short } from "#core/circuit/circuit.ts";
import type { Ohms, Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Edit, Fault } from "./part.ts";
import { type Contact, contacts } from "./plugs.ts";

/** Odds in 10,000 for each way a three-wire lead goes wrong. Common practice, no source. */
export interface WireOdds {
  readonly open: number;
  readonly short: number;
  readonly order: number;
  readonly dirt: number;
}

/** Three wires by the contact they start from, and the nodes where they end. */
export interface Wires {
  readonly at: string;
  readonly wire: (contact: Contact) => string;
  readonly end: (contact: Contact) => Node;
}

const replace: Seconds = 60;

const fault = (
  name: FaultName,
  at: string,
  slot: string,
  weight: number,
  edits: Edit[],
): Fault => ({
  name,
  at,
  edits,
  weight,
  slot,
  seen: false,
  repair: replace,
});

const openName: Readonly<Record<Contact, FaultName>> = {
  tip: "tip open",
  ring: "ring open",
  sleeve: "sleeve open",
};

/** Each contact open: worn springs, dirt, a broken joint or wire. */
export const opens = (
  { at, wire }: Wires,
  weight: number,
  which = contacts as readonly Contact[],
) =>
  which.map((contact) =>
    fault(openName[contact], at, `${at} ${contact}`, weight, [
      { edit: "ohms", element: wire(contact), ohms: open },
    ]),
  );

/** Each pair of wires shorted where they end. */
function shorts({ at, end }: Wires, weight: number): readonly Fault[] {
  const pairs: readonly (readonly [FaultName, Contact, Contact])[] = [
    ["tip and ring shorted", "tip", "ring"],
    ["tip and sleeve shorted", "tip", "sleeve"],
    ["ring and sleeve shorted", "ring", "sleeve"],
  ];
  return pairs.map(([name, a, b]) =>
    fault(name, at, `${at} short`, weight, [{ edit: "bridge", a: end(a), b: end(b), ohms: short }]),
  );
}

/** Where the wires from tip, ring and sleeve end, for the five wrong orders; and how often beside the usual slip. */
const orders: readonly (readonly [FaultName, readonly [Contact, Contact, Contact], number])[] = [
  ["tip and ring exchanged", ["ring", "tip", "sleeve"], 1],
  ["tip and sleeve exchanged", ["sleeve", "ring", "tip"], 1],
  ["ring and sleeve exchanged", ["tip", "sleeve", "ring"], 0.5],
  ["contacts turned, tip to ring", ["ring", "sleeve", "tip"], 0.25],
  ["contacts turned, tip to sleeve", ["sleeve", "tip", "ring"], 0.25],
];

/** All wrong orders of the three contacts: what a rebuilt plug can be. */
const wrongOrders = ({ at, wire, end }: Wires, weight: number): readonly Fault[] =>
  orders.map(([name, to, often]) =>
    fault(
      name,
      at,
      `${at} order`,
      weight * often,
      contacts.map((contact, index) => ({
        edit: "rewire",
        element: wire(contact),
        b: end(to[index] ?? contact),
      })),
    ),
  );

const dirt: readonly (readonly [FaultName, Ohms])[] = [
  ["return of 3 ohms", 3],
  ["return of 10 ohms", 10],
  ["return of 30 ohms", 30],
  ["return of 300 ohms", 300],
];

/** A return that is there, but through dirt. */
const dirtyReturns = ({ at, wire }: Wires, weight: number): readonly Fault[] =>
  dirt.map(([name, ohms]) =>
    fault(name, at, `${at} sleeve`, weight, [{ edit: "ohms", element: wire("sleeve"), ohms }]),
  );

/** All of them, for a lead or cord with three wires. */
export const wireFaults = (wires: Wires, odds: WireOdds): readonly Fault[] => [
  ...opens(wires, odds.open),
  ...shorts(wires, odds.short),
  ...wrongOrders(wires, odds.order),
  ...dirtyReturns(wires, odds.dirt),
];

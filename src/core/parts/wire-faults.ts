import { type Node, open, short } from "#core/circuit/circuit.ts";
import type { Ohms, Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Edit, Fault } from "./part.ts";
import type { Contact } from "./plugs.ts";
import { type Order, type Slips, slipsOf } from "./slips.ts";

/** The three contacts of a stereo jack, in the order of its wires. */
export const straightWires = ["tip", "ring", "sleeve"] as const;

/** Odds in 10,000 for each way an end goes wrong; zero for what it cannot. Common practice, no source. */
export interface WireOdds {
  readonly open: number;
  readonly short: number;
  readonly order: number;
  readonly dirt: number;
}

/** An end of a wire, and what the wire itself has, which dirt comes on top of; where it is left out, dirt stands for both. */
interface Touch {
  readonly element: string;
  readonly side: "a" | "b";
  readonly ohms?: Ohms;
}

/** One end of a lead, as a soldering iron meets it. */
export interface End {
  /** Where its faults are said to sit. */
  readonly at: string;
  readonly slips: Slips;
  readonly node: (contact: Contact) => Node;
  /** The wires that are soldered to a contact. */
  readonly soldered: (contact: Contact) => readonly Touch[];
}

const replace: Seconds = 60;

/** A fault of a wire or a joint: no eye sees it, and the lead is replaced. */
export const wireFault = (
  name: FaultName,
  at: string,
  slot: string,
  weight: number,
  edits: readonly Edit[],
): Fault => ({
  name,
  at,
  edits,
  weight,
  slot,
  seen: false,
  repair: replace,
});

/** Each contact open: worn springs, dirt, a broken joint or wire. */
const opens = ({ at, slips, soldered }: End, weight: number): readonly Fault[] =>
  slips.opens.map(([name, contact]) =>
    wireFault(
      name,
      at,
      `${at} ${contact}`,
      weight,
      soldered(contact).map(({ element }) => ({ edit: "ohms", element, ohms: open })),
    ),
  );

/** Two contacts that touch. */
const shorts = ({ at, slips, node }: End, weight: number): readonly Fault[] =>
  slips.shorts.map(([name, a, b]) =>
    wireFault(name, at, `${at} short`, weight, [
      { edit: "bridge", a: node(a), b: node(b), ohms: short },
    ]),
  );

const wrongOrders = (end: End, weight: number): readonly Fault[] =>
  end.slips.orders.map(([name, order, often]) =>
    wireFault(name, end.at, `${end.at} order`, weight * often, resoldered(end, order)),
  );

/** Every wire of an end where an order has it. A bridge inside the plug has both of its ends there. */
function resoldered({ node, soldered }: End, order: Order): readonly Edit[] {
  const moves = Object.entries(order) as (readonly [Contact, Contact])[];
  const touches = moves.flatMap(([from, to]) =>
    soldered(from).map(({ element, side }) => ({ element, [side]: node(to) })),
  );
  return [...new Set(touches.map(({ element }) => element))].map((element) => ({
    edit: "rewire",
    ...Object.assign({ element }, ...touches.filter((touch) => touch.element === element)),
  }));
}

/** Dirt on a contact with one wire. Where there are more, it lies between them and the plug, which the wires' ohms cannot say. */
const dirty = ({ at, slips, soldered }: End, weight: number): readonly Fault[] =>
  slips.dirt.flatMap(([name, contact, ohms, often]) => {
    const [touch, another] = soldered(contact);
    if (touch === undefined || another !== undefined) return [];
    const edits: readonly Edit[] = [
      { edit: "ohms", element: touch.element, ohms: (touch.ohms ?? 0) + ohms },
    ];
    return [{ ...wireFault(name, at, `${at} ${contact}`, weight * often, edits), cleans: true }];
  });

/** All that goes wrong at one end of a lead, with its odds. */
export const endFaults = (end: End, odds: WireOdds): readonly Fault[] =>
  [
    ...opens(end, odds.open),
    ...shorts(end, odds.short),
    ...wrongOrders(end, odds.order),
    ...dirty(end, odds.dirt),
  ].filter(({ weight, edits }) => weight > 0 && edits.length > 0);

/** Three wires by the contact they start from, and the nodes where they end. */
export interface Wires {
  readonly at: string;
  readonly wire: (contact: Contact) => string;
  readonly end: (contact: Contact) => Node;
}

/** All of them, for a cord with three wires, each element's second node its far end. The dirt's ohms are the cord's together with it. */
export const wireFaults = ({ at, wire, end }: Wires, odds: WireOdds): readonly Fault[] =>
  endFaults(
    {
      at,
      slips: slipsOf("TRS"),
      node: end,
      soldered: (contact) => [{ element: wire(contact), side: "b" }],
    },
    odds,
  );

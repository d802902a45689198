import type { Node } from "#core/circuit/circuit.ts";
import type { LeadWire } from "./lead.ts";
import type { Fault } from "./part.ts";
import { point } from "./part.ts";
import { type PinOrder, rearOf } from "./slips.ts";
import { type WireOdds, wireFault } from "./wire-faults.ts";

/** Odds in 10,000 at the ends of leads and adapters. Common practice, no source. */
export const odds = {
  /** Both ends of a lead together. */
  lead: { open: 15, short: 3, order: 3, dirt: 5 },
  /** The second end of a lead whose ends are wired differently: what only goes wrong there. */
  otherEnd: { open: 5, short: 0, order: 3, dirt: 0 },
  /** One of several thin ends, which feeds a line input: dirt is not heard there. */
  leg: { open: 12, short: 2, order: 2, dirt: 0 },
  /** Moulded on: nobody rebuilds it. */
  moulded: { open: 6, short: 1, order: 0, dirt: 4 },
  /** A socket that is used every day. */
  worn: { open: 4, short: 0, order: 0, dirt: 3 },
} as const satisfies Record<string, WireOdds>;

/** Somebody took a lead with two contacts a plug. */
export const twoContacts = (...plugs: readonly string[]): Fault => ({
  name: "lead with two contacts",
  at: "body",
  edits: plugs.map((plug) => ({ edit: "plug", plug, kind: "TS" })),
  weight: 60,
  slot: "plugs",
  seen: true,
  repair: 60,
});

/** Both legs soldered to one contact: a mono sum that looks like a stereo lead. */
export const sidesTogether = (a: Node, b: Node): Fault =>
  wireFault("both sides on one contact", "body", "body short", 10, [
    { edit: "bridge", a, b, ohms: 0.1 },
  ]);

/** Two legs of a lead made up the wrong way round: what hangs from one plug hangs from the other. */
export function legsExchanged(wires: readonly LeadWire[], one: string, two: string): Fault {
  const other = (node: Node): Node | undefined => {
    if (node.startsWith(`${one}.`)) return node.replace(one, two);
    return node.startsWith(`${two}.`) ? node.replace(two, one) : undefined;
  };
  return wireFault(
    "legs exchanged",
    "body",
    "legs",
    6,
    wires.flatMap(([element, from, to]) => {
      const [a, b] = [other(from), other(to)];
      if (a === undefined && b === undefined) return [];
      return [
        {
          edit: "rewire" as const,
          element,
          ...(a === undefined ? {} : { a }),
          ...(b === undefined ? {} : { b }),
        },
      ];
    }),
  );
}

/** Made for headsets of the other pin order: at its plug the return and the microphone are exchanged. */
export const otherPinOrder = (plug: string, device: PinOrder): Fault => {
  const { common, microphone } = rearOf(device);
  return wireFault("made for the other pin order", "body", "pin order", 40, [
    { edit: "rewire", element: "return", a: point(plug, microphone) },
    { edit: "rewire", element: "microphone", a: point(plug, common) },
  ]);
};

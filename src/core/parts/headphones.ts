import { open } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import type { FaultName } from "./fault-names.ts";
import { jointOhms, wireOhms } from "./leads.ts";
import type { Edit, Fault, Part } from "./part.ts";
import { point } from "./part.ts";
import { contacts } from "./plugs.ts";
import { type Wires, wireFaults } from "./wire-faults.ts";

/** Solder joints in the cups. Handbook, section 5. */
const cupJoint: Ohms = 0.1;

const cord: Wires = {
  at: "body",
  wire: (contact) => contact,
  end: (contact) => point("cups", contact),
};

const driverFault = (name: FaultName, side: string, weight: number, edits: Edit[]): Fault => ({
  name,
  at: "body",
  edits,
  weight,
  slot: `${side} driver`,
  seen: false,
  repair: 60,
});

const drivers = (["left", "right"] as const).flatMap((side) => [
  driverFault(`${side} driver dead`, side, 15, [
    { edit: "ohms", element: `${side} joint`, ohms: open },
  ]),
  driverFault(`${side} driver inverted`, side, 3, [
    { edit: "rewire", element: `${side} joint`, b: `${side} minus` },
    { edit: "rewire", element: `${side} return`, a: `${side} plus` },
  ]),
]);

/** A stereo set on one three-wire cord, 32 Ω a driver unless told otherwise. */
export const headphones = (ohms: Ohms = 32): Part => ({
  kind: "headphones",
  plugs: [{ name: "plug", kind: "TRS" }],
  sockets: [],
  body: [
    ...contacts.map((contact) =>
      resistor(contact, point("plug", contact), point("cups", contact), wireOhms + jointOhms),
    ),
    ...(["left", "right"] as const).flatMap((side) => [
      resistor(
        `${side} joint`,
        point("cups", side === "left" ? "tip" : "ring"),
        `${side} plus`,
        cupJoint / 2,
      ),
      resistor(`${side} driver`, `${side} plus`, `${side} minus`, ohms),
      resistor(`${side} return`, `${side} minus`, "common", cupJoint / 2),
    ]),
    resistor("common joint", "common", point("cups", "sleeve"), cupJoint),
  ],
  takes: (["left", "right"] as const).map((side) => ({
    plus: `${side} plus`,
    minus: `${side} minus`,
  })),
  controls: {},
  faults: [...wireFaults(cord, { open: 30, short: 5, order: 4, dirt: 8 }), ...drivers],
  look: 10,
});

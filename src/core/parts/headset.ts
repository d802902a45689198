import type { Circuit } from "#core/circuit/circuit.ts";
import { open, short } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import { cupJoint, driverFaults, driverProbes, driversIn } from "./drivers.ts";
import { kindOf } from "./kind.ts";
import { type Fault, point } from "./part.ts";
import { contactsOf } from "./plugs.ts";
import { otherOrder, type PinOrder, pinOrders, slipsOf } from "./slips.ts";
import { conductorOhms, usualRun } from "./wire.ts";
import { endFaults } from "./wire-faults.ts";

const commonOf = (order: PinOrder) => (order === "common on ring 2" ? "ring 2" : "sleeve");
const cups = (order: PinOrder) => point("cups", commonOf(order));

/**
 * Whoever made the plug had the other kind of socket in mind: the two rear contacts are exchanged. Odds: common practice, no source; the
 * repair is another set (handbook, section 8).
 */
const otherKind: Fault = {
  name: "pin order of the other kind",
  at: "plug",
  edits: [
    { edit: "rewire", element: "ring 2", b: point("cups", "sleeve") },
    { edit: "rewire", element: "sleeve", b: point("cups", "ring 2") },
  ],
  weight: 60,
  slot: "plug order",
  seen: false,
  repair: 20,
};

/** Nobody at a healthy socket hears it in the headphones, and nobody at the far end hears the talker. Odds: common practice, no source. */
const stuck: Fault = {
  name: "microphone button stuck",
  at: "body",
  edits: [{ edit: "ohms", element: "button", ohms: short }],
  weight: 5,
  slot: "microphone",
  seen: false,
  repair: 5,
};

/** The capsule, and beside it a button that shorts it while it is held. */
const talking = (order: PinOrder, ohms: Ohms): Circuit => [
  resistor("microphone", cups(otherOrder(order)), cups(order), ohms),
  resistor("button", cups(otherOrder(order)), cups(order), open),
];

const cordFaults = (order: PinOrder): readonly Fault[] =>
  endFaults(
    {
      at: "body",
      slips: slipsOf("TRRS", order),
      node: (contact) => point("cups", contact),
      soldered: (contact) => [{ element: contact, side: "b" }],
    },
    { open: 30, short: 5, order: 0, dirt: 8 },
  );

/**
 * Headphones with a microphone on one plug of four contacts, in either of the two published pin orders (facts, section 2). Where the
 * socket has the other one, the drivers' return goes through the microphone: hollow, until the button is held. 32 Ω a driver and
 * 1.5 kΩ of microphone (handbook, sections 2 and 5), on 1.2 m of thin wire (common practice, no source).
 */
export const headset = kindOf(
  "headphones",
  {
    ohms: { unit: "Ω", typical: 32, least: 1, most: 2000 },
    "pin order": { choices: pinOrders, typical: "common on ring 2" },
    microphone: { unit: "Ω", typical: 1500, least: 100, most: 10_000 },
    metres: { unit: "m", typical: 1.2, least: 0.1, most: 30 },
    gauge: { unit: "AWG", typical: 28, least: 16, most: 40 },
  },
  ({ ohms, "pin order": order, microphone, metres, gauge }) => ({
    plugs: [{ name: "plug", kind: "TRRS", size: "3.5 mm" }],
    sockets: [],
    body: [
      ...contactsOf("TRRS").map((contact) =>
        resistor(
          contact,
          point("plug", contact),
          point("cups", contact),
          conductorOhms(gauge, metres) + usualRun.joint,
        ),
      ),
      ...driversIn({ ohms, common: commonOf(order), lead: 0, meeting: cupJoint }),
      ...talking(order, microphone),
    ],
    takes: driverProbes,
    controls: {},
    faults: [
      ...cordFaults(order),
      ...driverFaults(ohms, { dead: 15, inverted: 2, bothInverted: 1 }),
      otherKind,
      stuck,
    ],
    look: 10,
  }),
);

import type { Ohms } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Contact, PlugKind } from "./plugs.ts";

/** Where what belongs at a contact is soldered instead; contacts left out are right. */
export type Order = Readonly<Partial<Record<Contact, Contact>>>;

/** What goes wrong at one end of a lead, by its kind of plug. `often` stands beside the usual slip, which is one. */
export interface Slips {
  readonly opens: readonly (readonly [FaultName, Contact])[];
  readonly shorts: readonly (readonly [FaultName, Contact, Contact])[];
  /** Every wrong order of the contacts: what a rebuilt plug can be. */
  readonly orders: readonly (readonly [FaultName, Order, often: number])[];
  /** A contact that is there, but through dirt. */
  readonly dirt: readonly (readonly [FaultName, Contact, Ohms, often: number])[];
}

const returnsThrough = (contact: Contact): Slips["dirt"] => [
  ["return of 3 ohms", contact, 3, 1],
  ["return of 10 ohms", contact, 10, 1],
  ["return of 30 ohms", contact, 30, 1],
  ["return of 300 ohms", contact, 300, 1],
];

/** A side through dirt: 5 and 18 dB weaker in 32 Ω on 10 Ω, and nothing that is heard at a line input. */
const sidesThrough: Slips["dirt"] = [
  ["tip of 30 ohms", "tip", 30, 0.5],
  ["tip of 300 ohms", "tip", 300, 0.5],
  ["ring of 30 ohms", "ring", 30, 0.5],
  ["ring of 300 ohms", "ring", 300, 0.5],
];

const twoPole: Slips = {
  opens: [
    ["tip open", "tip"],
    ["sleeve open", "sleeve"],
  ],
  shorts: [["tip and sleeve shorted", "tip", "sleeve"]],
  orders: [["tip and sleeve exchanged", { tip: "sleeve", sleeve: "tip" }, 1]],
  dirt: returnsThrough("sleeve"),
};

const threePole: Slips = {
  opens: [
    ["tip open", "tip"],
    ["ring open", "ring"],
    ["sleeve open", "sleeve"],
  ],
  shorts: [
    ["tip and ring shorted", "tip", "ring"],
    ["tip and sleeve shorted", "tip", "sleeve"],
    ["ring and sleeve shorted", "ring", "sleeve"],
  ],
  orders: [
    ["tip and ring exchanged", { tip: "ring", ring: "tip" }, 1],
    ["tip and sleeve exchanged", { tip: "sleeve", sleeve: "tip" }, 1],
    ["ring and sleeve exchanged", { ring: "sleeve", sleeve: "ring" }, 0.5],
    ["contacts turned, tip to ring", { tip: "ring", ring: "sleeve", sleeve: "tip" }, 0.25],
    ["contacts turned, tip to sleeve", { tip: "sleeve", ring: "tip", sleeve: "ring" }, 0.25],
  ],
  dirt: [...returnsThrough("sleeve"), ...sidesThrough],
};

/** Pin 1 screen, pin 2 hot, pin 3 cold: handbook, section 2. Crossed legs are the usual slip: section 5. */
const pins: Slips = {
  opens: [
    ["screen open", "pin 1"],
    ["hot open", "pin 2"],
    ["cold open", "pin 3"],
  ],
  shorts: [
    ["hot and cold shorted", "pin 2", "pin 3"],
    ["hot and screen shorted", "pin 2", "pin 1"],
    ["cold and screen shorted", "pin 3", "pin 1"],
  ],
  orders: [
    ["hot and cold exchanged", { "pin 2": "pin 3", "pin 3": "pin 2" }, 1],
    ["hot and screen exchanged", { "pin 1": "pin 2", "pin 2": "pin 1" }, 0.5],
    ["cold and screen exchanged", { "pin 1": "pin 3", "pin 3": "pin 1" }, 0.5],
    ["pins turned, 1 to 2", { "pin 1": "pin 2", "pin 2": "pin 3", "pin 3": "pin 1" }, 0.25],
    ["pins turned, 1 to 3", { "pin 1": "pin 3", "pin 2": "pin 1", "pin 3": "pin 2" }, 0.25],
  ],
  dirt: returnsThrough("pin 1"),
};

/** Its shell counts as the sleeve: handbook, section 2. */
const shell: Slips = {
  opens: [
    ["tip open", "tip"],
    ["shell open", "sleeve"],
  ],
  shorts: [["tip and shell shorted", "tip", "sleeve"]],
  orders: [["tip and shell exchanged", { tip: "sleeve", sleeve: "tip" }, 1]],
  dirt: returnsThrough("sleeve"),
};

/** Neighbours on a plug of four contacts touch; nobody rebuilds one, since they are moulded on (common practice, no source). */
const fourPole = (common: Contact, microphone: Contact): Slips => ({
  opens: [
    ["tip open", "tip"],
    ["ring open", "ring"],
    ["return open", common],
    ["microphone open", microphone],
  ],
  shorts: [
    ["tip and ring shorted", "tip", "ring"],
    ["ring and second ring shorted", "ring", "ring 2"],
    ["second ring and sleeve shorted", "ring 2", "sleeve"],
  ],
  orders: [],
  dirt: [...returnsThrough(common), ...sidesThrough],
});

/** Which of a four-contact plug's rear contacts is the common, and which the microphone's. */
export const pinOrders = ["common on ring 2", "common on sleeve"] as const;
export type PinOrder = (typeof pinOrders)[number];
export const otherOrder = (order: PinOrder): PinOrder =>
  order === "common on ring 2" ? "common on sleeve" : "common on ring 2";

const ofPlug: Readonly<Record<PlugKind, Slips>> = {
  TS: twoPole,
  TRS: threePole,
  TRRS: fourPole("ring 2", "sleeve"),
  XLR: pins,
  RCA: shell,
  // Nobody solders a radio link or a digital one: what goes wrong there is its boxes' own.
  link: { opens: [], shorts: [], orders: [], dirt: [] },
};

/** The rear contacts of a four-contact plug by what they carry. */
export const rearOf = (
  order: PinOrder,
): { readonly common: Contact; readonly microphone: Contact } =>
  order === "common on ring 2"
    ? { common: "ring 2", microphone: "sleeve" }
    : { common: "sleeve", microphone: "ring 2" };

/** What goes wrong at a plug; of one with four contacts, by its pin order. */
export const slipsOf = (kind: PlugKind, order: PinOrder = "common on ring 2"): Slips =>
  kind === "TRRS" && order === "common on sleeve" ? fourPole("sleeve", "ring 2") : ofPlug[kind];

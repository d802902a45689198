import { type Circuit, open } from "#core/circuit/circuit.ts";
import { multiply, scale } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels, Farads, Hertz, Ohms, Seconds } from "#core/units/units.ts";
import { capacitor, resistor } from "./boxes.ts";
import { cupJoint, reversed, type Side, sideFault, sides } from "./drivers.ts";
import { highPass, lowPass } from "./first-order.ts";
import { kindOf } from "./kind.ts";
import { type Buses, type Control, type Fault, type Gain, type Probe, point } from "./part.ts";
import { jackSizes } from "./plugs.ts";
import { setFault } from "./switch-faults.ts";
import { conductorOhms, usualRun } from "./wire.ts";
import { straightWires, type Wires, wireFaults } from "./wire-faults.ts";

/** How much of the cord is two legs, one for each ear (common practice, no source). */
const legs = 0.3;
/** Dirt between the pins of a cable and their sockets (common practice, no source). */
const dirtyPins: Ohms = 30;
/** A tip that does not seal lets the air out below this: 4 dB at 1 kHz, 20 at 120 Hz (common practice, no source). */
const leak: Hertz = 1200;
/** A grille half closed by wax (common practice, no source). */
const wax: Decibels = -10;
/** To press or turn an earpiece home. Handbook, section 8. */
const reseat: Seconds = 5;
/** To pull a two-pin plug and push it in, to wipe a grille: common practice, no source. */
const byHand: Seconds = 20;

const driverSets = ["one a side", "two a side"] as const;
type DriverSet = (typeof driverSets)[number];

/** Each side behind its two pins; of two drivers, the high one behind a capacitor. */
const earpiece = (side: Side, set: DriverSet, ohms: Ohms, farads: Farads): Circuit => [
  resistor(`${side} low joint`, `${side} plus`, `${side} low plus`, cupJoint / 2),
  resistor(`${side} low driver`, `${side} low plus`, `${side} minus`, ohms),
  ...(set === "one a side"
    ? []
    : [
        resistor(`${side} high joint`, `${side} plus`, `${side} high in`, cupJoint / 2),
        capacitor(`${side} crossover`, `${side} high in`, `${side} high plus`, farads),
        resistor(`${side} high driver`, `${side} high plus`, `${side} minus`, ohms),
      ]),
];

const cordOf = (metres: number, gauge: number): Circuit => {
  const conductor = (share: number) => conductorOhms(gauge, share * metres) + usualRun.joint;
  return [
    ...straightWires.map((contact) =>
      resistor(contact, point("plug", contact), point("cups", contact), conductor(1 - legs)),
    ),
    ...sides.flatMap((side) => [
      resistor(`${side} joint`, split(side), `${side} plus`, conductor(legs)),
      resistor(`${side} return`, `${side} minus`, "common", conductor(legs)),
    ]),
    resistor("common joint", "common", point("cups", "sleeve"), cupJoint),
  ];
};

/** Where a side's leg begins. */
const split = (side: Side) => point("cups", side === "left" ? "tip" : "ring");

/** The low drivers, left first, then the high ones. */
const probes = (set: DriverSet): readonly Probe[] =>
  (set === "one a side" ? ["low"] : ["low", "high"]).flatMap((which) =>
    sides.map((side) => ({ plus: `${side} ${which} plus`, minus: `${side} minus` })),
  );

/**
 * From the drivers to the ears. A low driver falls off by itself where the crossover lets the high one in, so that both together are what
 * came (common practice, no source). `crossover` is nothing where one driver does it all.
 */
function acoustic(control: Control, at: Hertz, crossover?: Hertz): Buses {
  const ear = (side: Side): readonly Gain[] => {
    const heard = scale(highPass(control(`${side} leak`), at), control(`${side} level`));
    const only = (gain: Gain): readonly Gain[] => (side === "left" ? [gain, 0] : [0, gain]);
    if (crossover === undefined) return only(heard);
    return [...only(multiply(heard, lowPass(crossover, at))), ...only(heard)];
  };
  return { left: ear("left"), right: ear("right") };
}

const cord: Wires = {
  at: "body",
  wire: (contact) => contact,
  end: (contact) => point("cups", contact),
};

/** Of one side. Odds: the handbook's shares for a weak side in in-ears (section 8), else common practice, no source. */
const earFaults = (side: Side, set: DriverSet): readonly Fault[] => [
  setFault(`${side} seal lost`, { [`${side} leak`]: leak }, 60, { repair: reseat }),
  setFault(`wax on the ${side}`, { [`${side} level`]: fromDecibels(wax) }, 30, { repair: byHand }),
  {
    ...sideFault(`${side} two-pin plug reversed`, side, 12, reversed(side)),
    slot: `${side} pins`,
    repair: byHand,
  },
  {
    ...sideFault(`${side} pins dirty`, side, 15, [
      { edit: "ohms", element: `${side} joint`, ohms: dirtyPins },
    ]),
    slot: `${side} leg`,
    repair: byHand,
  },
  {
    ...sideFault(`${side} cable broken at the ear`, side, 25, [
      { edit: "ohms", element: `${side} joint`, ohms: open },
    ]),
    slot: `${side} leg`,
  },
  ...deadDrivers(side, set),
];

const deadDrivers = (side: Side, set: DriverSet): readonly Fault[] => {
  const dead = (which: "low" | "high") => [
    { edit: "ohms", element: `${side} ${which} joint`, ohms: open } as const,
  ];
  if (set === "one a side") return [sideFault(`${side} driver dead`, side, 8, dead("low"))];
  return [
    sideFault(`${side} low driver dead`, side, 6, dead("low")),
    sideFault(`${side} high driver dead`, side, 6, dead("high")),
  ];
};

const bothFaults: readonly Fault[] = [
  setFault("both seals lost", { "left leak": leak, "right leak": leak }, 30, { repair: reseat }),
  {
    ...sideFault("earpieces exchanged", "left", 8, [
      { edit: "rewire", element: "left joint", a: split("right") },
      { edit: "rewire", element: "right joint", a: split("left") },
    ]),
    slot: "earpieces",
    seen: true,
    repair: byHand,
  },
];

/**
 * Earpieces on two-pin plugs, worn in the ear canal: 16 Ω a driver, two drivers a side with the crossover near 2 kHz, on 1.2 m of thin
 * wire, unless told otherwise (handbook, section 3; else common practice, no source). Two in parallel dip to half of that. They are
 * nobody's but the wearer's: never turned round, exchanged with a neighbour or lent for a check (handbook, sections 6 and 10).
 */
export const inEars = kindOf(
  "headphones",
  {
    ohms: { unit: "Ω", typical: 16, least: 3, most: 300 },
    drivers: { choices: driverSets, typical: "two a side" },
    crossover: { unit: "F", typical: 5e-6, least: 1e-7, most: 1e-4 },
    size: { choices: jackSizes, typical: "3.5 mm" },
    metres: { unit: "m", typical: 1.2, least: 0.1, most: 10 },
    gauge: { unit: "AWG", typical: 28, least: 16, most: 40 },
  },
  ({ ohms, drivers, crossover, size, metres, gauge }) => {
    const corner = drivers === "two a side" ? 1 / (2 * Math.PI * ohms * crossover) : undefined;
    return {
      plugs: [{ name: "plug", kind: "TRS", size }],
      sockets: [],
      body: [
        ...cordOf(metres, gauge),
        ...sides.flatMap((side) => earpiece(side, drivers, ohms, crossover)),
      ],
      takes: probes(drivers),
      controls: { "left leak": 0, "right leak": 0, "left level": 1, "right level": 1 },
      through: (control, at) => acoustic(control, at, corner),
      faults: [
        ...wireFaults(cord, { open: 15, short: 3, order: 1, dirt: 5 }),
        ...sides.flatMap((side) => earFaults(side, drivers)),
        ...bothFaults,
      ],
      oneListener: true,
      look: 10,
    };
  },
);

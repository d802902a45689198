import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import {
  type Cups,
  cupJoint,
  type DriverOdds,
  driverFaults,
  driverProbes,
  driversIn,
} from "./drivers.ts";
import { kindOf } from "./kind.ts";
import { point } from "./part.ts";
import { jackSizes } from "./plugs.ts";
import { conductorOhms, usualRun } from "./wire.ts";
import { straightWires, type Wires, wireFaults } from "./wire-faults.ts";

const cord: Wires = {
  at: "body",
  wire: (contact) => contact,
  end: (contact) => point("cups", contact),
};

/** Three wires share one return all the way to the cups; four have one for each side, and meet at the plug. */
const wirings = ["three wires", "four wires"] as const;

/** Where two returns are soldered to one contact (common practice, no source). */
const atThePlug: Ohms = 0.01;

/** What stands in the wires that both sides use, and what in each side's own two. */
const wired: Readonly<
  Record<
    (typeof wirings)[number],
    (cord: Ohms) => Pick<Cups, "lead" | "meeting"> & { shared: Ohms }
  >
> = {
  "three wires": (ohms) => ({ shared: ohms, lead: 0, meeting: cupJoint }),
  "four wires": (ohms) => ({ shared: 0, lead: ohms, meeting: atThePlug }),
};

/** Only a pair of wires to each side can be exchanged by whoever rebuilds the plug. Common practice, no source. */
const odds: Readonly<Record<(typeof wirings)[number], DriverOdds>> = {
  "three wires": { dead: 15, inverted: 3, bothInverted: 1 },
  "four wires": { dead: 15, inverted: 10, bothInverted: 3 },
};

/** A stereo set on one cord, 32 Ω a driver on 3 m of three wires unless told otherwise: the handbook's (section 5). */
export const headphones = kindOf(
  "headphones",
  {
    ohms: { unit: "Ω", typical: 32, least: 1, most: 2000 },
    size: { choices: jackSizes, typical: "6.35 mm" },
    metres: { unit: "m", typical: 3, least: 0.1, most: 30 },
    gauge: { unit: "AWG", typical: 24, least: 16, most: 40 },
    wiring: { choices: wirings, typical: "three wires" },
  },
  ({ ohms, size, metres, gauge, wiring }) => {
    const { shared, lead, meeting } = wired[wiring](conductorOhms(gauge, metres));
    return {
      plugs: [{ name: "plug", kind: "TRS", size }],
      sockets: [],
      body: [
        ...straightWires.map((contact) =>
          resistor(
            contact,
            point("plug", contact),
            point("cups", contact),
            shared + usualRun.joint,
          ),
        ),
        ...driversIn({ ohms, common: "sleeve", lead, meeting }),
      ],
      takes: driverProbes,
      controls: {},
      faults: [
        ...wireFaults(cord, { open: 30, short: 5, order: 4, dirt: 8 }),
        ...driverFaults(ohms, odds[wiring]),
      ],
      look: 10,
    };
  },
);

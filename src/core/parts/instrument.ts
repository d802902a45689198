import type { Ohms } from "#core/units/units.ts";
import { powered, resistor, supplies } from "./boxes.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import { point } from "./part.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inMono, inOrder, turnedBy } from "./sides.ts";
import { normalFaults, phonesFaults } from "./socket-faults.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { switchFault } from "./switch-faults.ts";

const [left, right] = ["left/mono", "right"] as const;
const spring: Ohms = 0.05;

const normal = [resistor("normal", point(left, "tip"), point(right, "tip"), spring)];

const jacks = (ohms: Ohms): Pair => ({
  names: [left, right],
  buses: ["left", "right"],
  connector: "jack",
  by: "unbalanced",
  ohms,
});

/**
 * A keyboard, a drum kit's sound module, and their like: a left jack that also carries the right side while nothing stands in the right one
 * (handbook, section 2), and a headphone socket. 100 to 1000 Ω a jack (handbook, section 3).
 */
export const instrument = kindOf(
  "source",
  {
    supply: { choices: supplies, typical: "floating" },
    "leg ohms": { unit: "Ω", typical: 470, least: 1, most: 10_000 },
    "output ohms": { unit: "Ω", typical: 47, least: 0.1, most: 1000 },
  },
  ({ supply, "leg ohms": legOhms, "output ohms": ohms }) => ({
    plugs: [],
    sockets: [
      ...pairSockets(jacks(legOhms)),
      { ...stereoOutput({ name: "phones", ohms }), mistakenFor: { [left]: 30 } },
    ],
    body: powered(supply),
    normals: [{ whileEmpty: [right], circuit: normal }],
    takes: [],
    controls: { ...powerControls, mono: 0, volume: 1 },
    through: (control) => {
      const gain = control("power") * control("volume");
      return { ...inOrder(inMono(control("mono")), turnedBy(gain, gain)) };
    },
    faults: [
      switchFault("volume down", "volume", 0, 120),
      switchFault("mono", "mono", 1, 30),
      ...powerFaults(supply, 60),
      ...normalFaults(left, normal),
      ...pairFaults(jacks(legOhms)),
      ...phonesFaults("phones"),
    ],
    look: 15,
  }),
);

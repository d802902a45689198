import { earthDifference, powered, supplies } from "./boxes.ts";
import { inputControls, inputFaults, inputSides } from "./dead-sides.ts";
import { inletOf, inputKinds, inputOhms, linkIn } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inOrder, turnedBy } from "./sides.ts";
import { balancings, legs } from "./stages.ts";
import { linkOutputs } from "./stereo-outputs.ts";
import { linkControls, linkFaults, linkLate, linkSides } from "./subscription.ts";

/** Where a digital link begins: a stereo feed in, the same on each of its links. */
export const linkSender = kindOf(
  "amplifier",
  {
    links: { unit: "outputs", typical: 1, least: 1, most: 64 },
    supply: { choices: supplies, typical: "mains-earthed" },
    input: {
      choices: inputKinds.filter((kind) => kind !== "one balanced jack"),
      typical: "XLR pair",
    },
    "input ohms": inputOhms,
  },
  ({ links, supply, input, "input ohms": ohms }) => {
    const inlet = inletOf(input, ohms);
    return {
      plugs: [],
      sockets: [...inlet.sockets, ...linkOutputs(links)],
      body: powered(supply, earthDifference),
      normals: inlet.normals,
      takes: inlet.takes,
      controls: { ...powerControls, ...inputControls },
      through: (control) => ({
        ...inOrder(inputSides(control), turnedBy(control("power"), control("power"))),
      }),
      faults: [...powerFaults(supply, 40), ...inputFaults, ...inlet.faults],
      look: 15,
    };
  },
);

/** A box at the stage end of a digital link: left and right as a pair of XLR outputs. */
export const stageBox = kindOf(
  "amplifier",
  {
    balancing: { choices: balancings, typical: "actively balanced" },
    "leg ohms": legs,
    supply: { choices: supplies, typical: "mains-earthed" },
  },
  ({ balancing: by, "leg ohms": ohms, supply }) => {
    const pair: Pair = {
      names: ["out left", "out right"],
      buses: ["left", "right"],
      connector: "XLR",
      by,
      ohms,
    };
    return {
      plugs: [linkIn.plug],
      sockets: pairSockets(pair),
      body: [...powered(supply, earthDifference), ...linkIn.body],
      takes: linkIn.takes,
      controls: { ...powerControls, ...linkControls },
      through: (control) => ({
        ...inOrder(linkSides(control), turnedBy(control("power"), control("power"))),
      }),
      late: linkLate,
      faults: [...linkFaults, ...powerFaults(supply, 40), ...pairFaults(pair)],
      look: 20,
    };
  },
);

import { earthDifference, powered, supplies } from "./boxes.ts";
import { inputControls, inputFaults, inputSides } from "./dead-sides.ts";
import { inletOf, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import type { Control, Fault } from "./part.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inOrder, type Sides, turnedBy } from "./sides.ts";
import { balancings, connectors, legs } from "./stages.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** What is alike in the two sides, and what differs, each with a gain: left and right again afterwards. */
const widened = (middle: number, sides: number): Sides => ({
  left: [(middle + sides) / 2, (middle - sides) / 2],
  right: [(middle - sides) / 2, (middle + sides) / 2],
});

/** Width turned up: the middle 12 dB down, what differs 3 dB up (common practice, no source). */
const wide = { middle: 0.25, sides: 1.41 };

/** Odds: common practice, no source. */
const faults: readonly Fault[] = [
  setFault("width turned up", wide, 40, { slot: "width" }),
  setFault("width at nothing", { sides: 0 }, 20, { slot: "width" }),
  switchFault("volume down", "level", 0, 30),
];

function through(control: Control) {
  const gain = control("power") * control("level");
  return {
    ...inOrder(
      inputSides(control),
      widened(control("middle"), control("sides")),
      turnedBy(gain, gain),
    ),
  };
}

/** A processor in the feed that can widen it: left and right in and out, by balanced jacks or XLR. */
export const processor = kindOf(
  "amplifier",
  {
    connector: { choices: connectors, typical: "jack" },
    balancing: { choices: balancings, typical: "actively balanced" },
    "leg ohms": legs,
    supply: { choices: supplies, typical: "mains-earthed" },
    "input ohms": inputOhms,
  },
  ({ connector, balancing: by, "leg ohms": ohms, supply, "input ohms": into }) => {
    const inlet = inletOf(connector === "XLR" ? "XLR pair" : "balanced left and right jacks", into);
    const pair: Pair = {
      names: ["out left", "out right"],
      buses: ["left", "right"],
      connector,
      by,
      ohms,
    };
    return {
      plugs: [],
      sockets: [...inlet.sockets, ...pairSockets(pair)],
      body: powered(supply, earthDifference),
      normals: inlet.normals,
      takes: inlet.takes,
      controls: { ...powerControls, ...inputControls, level: 1, middle: 1, sides: 1 },
      through,
      faults: [
        ...faults,
        ...powerFaults(supply, 40),
        ...inputFaults,
        ...inlet.faults,
        ...pairFaults(pair),
      ],
      look: 15,
    };
  },
);

import { earthDifference, powered, supplies } from "./boxes.ts";
import { inputControls, inputFaults, inputSides } from "./dead-sides.ts";
import { inletOf, inputKinds, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inOrder, turnedBy } from "./sides.ts";
import { switchFault } from "./switch-faults.ts";

/** 26 dB (common practice, no source). */
const gain = 20;

/** What a loudspeaker hangs on: a jack that headphones fit, and must never be in (handbook, section 10). */
const speakers: Pair = {
  names: ["speaker left", "speaker right"],
  buses: ["left", "right"],
  connector: "jack",
  by: "unbalanced",
  ohms: 0.1,
  said: { harms: "loudspeaker output" },
};

/** An amplifier for loudspeakers on 6.35 mm jacks. It stands here to be refused: its outputs can harm whoever listens. */
export const loudspeakerAmplifier = kindOf(
  "amplifier",
  {
    supply: { choices: supplies, typical: "mains-earthed" },
    input: { choices: inputKinds, typical: "XLR pair" },
    "input ohms": inputOhms,
  },
  ({ supply, input, "input ohms": ohms }) => {
    const inlet = inletOf(input, ohms);
    return {
      plugs: [],
      sockets: [...inlet.sockets, ...pairSockets(speakers)],
      body: powered(supply, earthDifference),
      normals: inlet.normals,
      takes: inlet.takes,
      controls: { ...powerControls, ...inputControls, level: 1 },
      through: (control) => {
        const by = gain * control("power") * control("level");
        const { left, right } = inOrder(inputSides(control), turnedBy(by, by));
        return inlet.takes.length === 2
          ? { left, right }
          : { left: [left[0] + left[1]], right: [right[0] + right[1]] };
      },
      faults: [
        switchFault("volume down", "level", 0, 60),
        ...powerFaults(supply, 60),
        ...inputFaults,
        ...inlet.faults,
        ...pairFaults(speakers),
      ],
      look: 15,
    };
  },
);

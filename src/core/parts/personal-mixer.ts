import { powered, supplies } from "./boxes.ts";
import { linkIn } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import type { Control, Fault } from "./part.ts";
import { jackSizes } from "./plugs.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inOrder, pannedPair, turnedBy } from "./sides.ts";
import { phonesFaults, volumeFaults, volumeOf, volumesUp } from "./socket-faults.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { linkControls, linkFaults, linkLate, linkSides } from "./subscription.ts";
import { setFault, switchFault } from "./switch-faults.ts";

const slot = { slot: "pan" };

/** Two channels of a personal mixer, with a pan each. Odds: common practice, no source. */
const panFaults: readonly Fault[] = [
  setFault("both channels panned to the middle", { "left pan": 0, "right pan": 0 }, 40, slot),
  setFault("both channels panned left", { "right pan": -1 }, 8, slot),
  setFault("both channels panned right", { "left pan": 1 }, 8, slot),
  setFault("left panned to the middle", { "left pan": 0 }, 10, slot),
  setFault("right panned to the middle", { "right pan": 0 }, 10, slot),
  switchFault("left channel down", "left channel", 0, 25),
  switchFault("right channel down", "right channel", 0, 25),
];

function through(control: Control) {
  return {
    ...inOrder(
      linkSides(control),
      turnedBy(control("left channel"), control("right channel")),
      pannedPair(control("left pan"), control("right pan")),
      turnedBy(control("power"), control("power")),
    ),
  };
}

/** A small mixer at a performer's hand, fed by a digital link that also powers it, with a headphone socket of 10 Ω. */
export const personalMixer = kindOf(
  "amplifier",
  {
    supply: { choices: supplies, typical: "floating" },
    size: { choices: jackSizes, typical: "6.35 mm" },
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  ({ supply, size, "output ohms": ohms }) => ({
    plugs: [linkIn.plug],
    sockets: [
      {
        ...stereoOutput({ name: "phones", size, ohms, levels: volumeOf("phones") }),
        ties: ["own mix", "headphone knob"],
      },
    ],
    body: [...powered(supply), ...linkIn.body],
    takes: linkIn.takes,
    controls: {
      ...powerControls,
      ...linkControls,
      "left pan": -1,
      "right pan": 1,
      "left channel": 1,
      "right channel": 1,
      ...volumesUp(["phones"]),
    },
    through,
    late: linkLate,
    faults: [
      ...linkFaults,
      ...panFaults,
      ...powerFaults(supply, 60),
      ...volumeFaults("phones"),
      ...phonesFaults("phones"),
    ],
    look: 20,
  }),
);

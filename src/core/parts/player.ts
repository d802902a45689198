import { powered, supplies } from "./boxes.ts";
import { kindOf } from "./kind.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inOrder, picked, turnedBy } from "./sides.ts";
import { deadOutput } from "./socket-faults.ts";
import { rcaOutput } from "./stereo-outputs.ts";
import { setFault } from "./switch-faults.ts";

/**
 * A player of discs, cards or tapes with a pair of RCA outputs at line level, on a plug-top supply. Some can play one side of a recording in
 * both. 100 to 1000 Ω (handbook, section 3).
 */
export const player = kindOf(
  "source",
  {
    supply: { choices: supplies, typical: "floating" },
    "output ohms": { unit: "Ω", typical: 470, least: 1, most: 10_000 },
  },
  ({ supply, "output ohms": ohms }) => ({
    plugs: [],
    sockets: [rcaOutput("left", "right", "left", ohms), rcaOutput("right", "left", "right", ohms)],
    body: powered(supply),
    takes: [],
    controls: { ...powerControls, "left plays": 0, "right plays": 1 },
    through: (control) => {
      const gain = control("power");
      return {
        ...inOrder(picked(control("left plays"), control("right plays")), turnedBy(gain, gain)),
      };
    },
    faults: [
      ...powerFaults(supply, 100),
      setFault("left channel chosen for both", { "right plays": 0 }, 10, { slot: "channel" }),
      setFault("right channel chosen for both", { "left plays": 1 }, 10, { slot: "channel" }),
      deadOutput("left", "RCA"),
      deadOutput("right", "RCA"),
    ],
    look: 15,
  }),
);

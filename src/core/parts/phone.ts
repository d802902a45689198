import { powered } from "./boxes.ts";
import { computerControls, computerFaults, computerThrough } from "./computer.ts";
import { kindOf } from "./kind.ts";
import { phonesFaults } from "./socket-faults.ts";
import { linkOutput, phonesKinds, stereoOutput } from "./stereo-outputs.ts";

const states = ["on its battery", "charging"] as const;

/** A pocket telephone's own output, or its dongle's: 2 Ω a side (handbook, section 3). Charging, it hangs on a plug-top supply. */
export const phone = kindOf(
  "source",
  {
    power: { choices: states, typical: "on its battery" },
    socket: { choices: phonesKinds, typical: "four-pole, common on ring 2" },
    "output ohms": { unit: "Ω", typical: 2, least: 0.1, most: 1000 },
  },
  ({ power, socket, "output ohms": ohms }) => ({
    plugs: [],
    sockets: [
      {
        ...stereoOutput({ name: "phones", kind: socket, size: "3.5 mm", ohms }),
        ties: ["another device chosen"],
      },
      { ...linkOutput("wireless"), ties: ["another device chosen"] },
    ],
    body: powered(power === "charging" ? "floating" : "battery"),
    takes: [],
    controls: computerControls,
    through: computerThrough,
    faults: [...computerFaults, ...phonesFaults("phones", socket)],
    look: 15,
  }),
);

import { powered, supplies } from "./boxes.ts";
import { computerControls, computerFaults, computerThrough } from "./computer.ts";
import { kindOf } from "./kind.ts";
import { phonesFaults } from "./socket-faults.ts";
import { linkOutput, phonesKinds, stereoOutput } from "./stereo-outputs.ts";
import { switchFault } from "./switch-faults.ts";

/** The application sends to a pair of outputs that this socket is not: 3 and 4, say. */
const wrongPair = switchFault("wrong output pair", "pair", 0, 10);

/**
 * A computer's own output: settings in front of a four-pole socket, 10 Ω a side, on a two-pin supply, unless told otherwise; and a radio
 * link of its own. Its mono setting is half of left and right in both (common practice, no source).
 */
export const laptop = kindOf(
  "source",
  {
    supply: { choices: supplies, typical: "floating" },
    socket: { choices: phonesKinds, typical: "four-pole, common on ring 2" },
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  ({ supply, socket, "output ohms": ohms }) => ({
    plugs: [],
    sockets: [
      {
        ...stereoOutput({ name: "phones", kind: socket, size: "3.5 mm", ohms }),
        ties: ["another device chosen"],
      },
      { ...linkOutput("wireless"), ties: ["another device chosen"] },
    ],
    body: powered(supply),
    takes: [],
    controls: { ...computerControls, pair: 1 },
    through: (control) => {
      const { left = [], right = [] } = computerThrough(control);
      const sent = (row: typeof left) => row.map((gain) => Number(gain) * control("pair"));
      return { left: sent(left), right: sent(right) };
    },
    faults: [...computerFaults, wrongPair, ...phonesFaults("phones", socket)],
    look: 15,
  }),
);

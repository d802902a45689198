import { powered } from "./boxes.ts";
import { linkIn } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { jackSizes } from "./plugs.ts";
import { powerControls, powerFaults } from "./power.ts";
import { balanceControls, balanced, balanceFaults, inMono, inOrder, turnedBy } from "./sides.ts";
import { phonesFaults, volumeFaults, volumeOf, volumesUp } from "./socket-faults.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** The receiver a performer wears: a radio link in, a headphone socket out, on a battery. 10 Ω a side (common practice, no source). */
export const beltPack = kindOf(
  "amplifier",
  {
    size: { choices: jackSizes, typical: "3.5 mm" },
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  ({ size, "output ohms": ohms }) => ({
    plugs: [linkIn.plug],
    sockets: [
      {
        ...stereoOutput({ name: "phones", size, ohms, levels: volumeOf("phones") }),
        ties: ["headphone knob"],
      },
    ],
    body: [...powered("battery"), ...linkIn.body],
    takes: linkIn.takes,
    controls: {
      ...powerControls,
      ...balanceControls,
      mono: 0,
      tuned: 1,
      ...volumesUp(["phones"]),
    },
    through: (control) => {
      const gain = control("power") * control("tuned");
      return {
        ...inOrder(inMono(control("mono")), balanced(control), turnedBy(gain, gain)),
      };
    },
    faults: [
      switchFault("mono", "mono", 1, 80),
      ...balanceFaults,
      ...powerFaults("battery", 100),
      setFault("tuned to another channel", { tuned: 0 }, 40, { repair: 30 }),
      ...volumeFaults("phones"),
      ...phonesFaults("phones"),
    ],
    look: 15,
  }),
);

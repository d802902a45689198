import { earthDifference, powered, supplies } from "./boxes.ts";
import { inputControls, inputFaults, inputSides } from "./dead-sides.ts";
import { inletOf, inputOhms, isNormalled } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import type { Control, Fault } from "./part.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inMono, inOrder, picked, turnedBy } from "./sides.ts";
import { linkOutputs } from "./stereo-outputs.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** Inputs that transmitters have. */
const inputs = [
  "balanced left and right jacks",
  "left and right jacks",
  "XLR pair",
  "RCA pair",
  "stereo jack",
] as const;

/** Only the left plug is in: the right side takes the left's (0) or nothing (-1), by whether there is a normal. */
const onlyLeft = (normalled: boolean): Fault =>
  setFault("only the left input fed", { "right takes": normalled ? 0 : -1 }, 40, { repair: 20 });

function through(control: Control) {
  const gain = control("power") * control("level");
  return {
    ...inOrder(
      inputSides(control),
      picked(0, control("right takes")),
      inMono(control("mono")),
      turnedBy(gain, gain),
    ),
  };
}

/** A radio transmitter for belt packs: a stereo feed in, one link for each pack that listens. */
export const transmitter = kindOf(
  "amplifier",
  {
    links: { unit: "outputs", typical: 1, least: 1, most: 64 },
    supply: { choices: supplies, typical: "floating" },
    input: { choices: inputs, typical: "balanced left and right jacks" },
    "input ohms": inputOhms,
  },
  ({ links, supply, input, "input ohms": ohms }) => {
    const inlet = inletOf(input, ohms);
    const single = input === "stereo jack";
    return {
      plugs: [],
      sockets: [...inlet.sockets, ...linkOutputs(links)],
      body: powered(supply, earthDifference),
      normals: inlet.normals,
      takes: inlet.takes,
      controls: { ...powerControls, ...inputControls, mono: 0, level: 1, "right takes": 1 },
      through,
      faults: [
        switchFault("mono", "mono", 1, 60),
        switchFault("volume down", "level", 0, 40),
        ...(single ? [] : [onlyLeft(isNormalled(input))]),
        ...powerFaults(supply, 60),
        ...inputFaults,
        ...inlet.faults,
      ],
      look: 15,
    };
  },
);

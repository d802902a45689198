import type { Ohms } from "#core/units/units.ts";
import { earthDifference, powered, type Supply, supplies } from "./boxes.ts";
import { inputControls, inputFaults, inputSides } from "./dead-sides.ts";
import { type InputKind, inletOf, inputKinds, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import type { Buses, Control, Fault, Part, Socket } from "./part.ts";
import { powerControls, powerFaults } from "./power.ts";
import { balanceControls, balanced, balanceFaults, inMono, inOrder, turnedBy } from "./sides.ts";
import { phonesFaults, volumeFaults, volumeOf, volumesUp } from "./socket-faults.ts";
import { monoOutput } from "./stages.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { switchFault } from "./switch-faults.ts";

/** What one output is called. */
export const outputName = (index: number): string => `output ${index + 1}`;

/** Whether a box has something. */
const fitting = { choices: ["none", "fitted"], typical: "none" } as const;
type Fitted = (typeof fitting.choices)[number];

interface Values {
  readonly outputs: number;
  readonly supply: Supply;
  readonly input: InputKind;
  readonly "input ohms": Ohms;
  readonly "output ohms": Ohms;
  readonly balance: Fitted;
  readonly blend: Fitted;
  readonly "balanced output": Fitted;
}

const balancedPair = ["balanced left", "balanced right"] as const;

/** One side of a balanced headphone output: an amplifier for each end of its driver. */
const balancedOutput = (side: "left" | "right", ohms: Ohms): Socket => ({
  name: `balanced ${side}`,
  side: "out",
  partner: side === "left" ? balancedPair[1] : balancedPair[0],
  harms: "balanced headphone output",
  ...monoOutput({
    name: `balanced ${side}`,
    connector: "XLR",
    bus: side,
    by: "actively balanced",
    ohms,
  }),
});

function amplifier(values: Values): Part {
  const names = Array.from({ length: values.outputs }, (_, index) => outputName(index));
  const ohms = values["output ohms"];
  const inlet = inletOf(values.input, values["input ohms"]);
  return {
    plugs: [],
    sockets: [
      ...inlet.sockets,
      ...names.map((name) => stereoOutput({ name, ohms, levels: volumeOf(name) })),
      ...(values["balanced output"] === "fitted"
        ? [balancedOutput("left", ohms), balancedOutput("right", ohms)]
        : []),
    ],
    body: powered(values.supply, earthDifference),
    normals: inlet.normals,
    takes: inlet.takes,
    controls: {
      ...powerControls,
      ...inputControls,
      ...balanceControls,
      mono: 0,
      level: 1,
      blend: 1,
      ...volumesUp(names),
    },
    through: (control) => through(control, inlet.takes.length),
    faults: [
      switchFault("mono", "mono", 1, 50),
      ...powerFaults(values.supply, 120),
      switchFault("volume down", "level", 0, 40),
      ...(values.balance === "fitted" ? balanceFaults : []),
      ...(values.blend === "fitted" ? [blendFault] : []),
      ...inputFaults,
      ...inlet.faults,
      ...names.flatMap((name) => [...volumeFaults(name), ...phonesFaults(name)]),
    ],
    look: 15,
  };
}

/** A knob between this feed and another input, turned over to the other. */
const blendFault: Fault = switchFault("blend turned away from the feed", "blend", 0, 15);

/** The two sides inside; a single balanced input goes to both. */
function through(control: Control, taken: number): Buses {
  const gain = control("power") * control("level") * control("blend");
  const { left, right } = inOrder(
    inputSides(control),
    inMono(control("mono")),
    balanced(control),
    turnedBy(gain, gain),
  );
  return taken === 2
    ? { left, right }
    : { left: [left[0] + left[1]], right: [right[0] + right[1]] };
}

/**
 * One stereo input to every output, each with a volume of its own. On a plug-top supply, 10 kΩ a side in and 10 Ω a side out, unless told
 * otherwise. 'blend' is a knob between the feed and an auxiliary input of its own. A balanced output has an amplifier at each end of a
 * driver.
 */
export const headphoneAmplifier = kindOf(
  "amplifier",
  {
    outputs: { unit: "outputs", typical: 1, least: 1, most: 64 },
    supply: { choices: supplies, typical: "floating" },
    input: { choices: inputKinds, typical: "stereo jack" },
    "input ohms": inputOhms,
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
    balance: fitting,
    blend: fitting,
    "balanced output": fitting,
  },
  amplifier,
);

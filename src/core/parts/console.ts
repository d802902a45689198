import { powered, supplies } from "./boxes.ts";
import { at, deskBuses, deskControls, deskFaults, mixOf } from "./desk.ts";
import { balancedInput, differenceAt, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import type { Buses, Control, Socket } from "./part.ts";
import { phonesFaults } from "./socket-faults.ts";
import { type Balancing, balancings, legs } from "./stages.ts";
import { linkOutput, stereoOutput } from "./stereo-outputs.ts";

/** The main pair, the headphone socket, and a stereo send that follows the pans. */
function through(control: Control): Buses {
  const mix = mixOf(control);
  return {
    ...deskBuses(mix, control),
    "mix left": at(mix.left, control("send level")),
    "mix right": at(mix.right, control("send level")),
  };
}

const pairsOf = (by: Balancing, ohms: number): readonly Pair[] => [
  {
    names: ["main left", "main right"],
    connector: "XLR",
    by,
    ohms,
    said: { ties: ["main fader"], mistakenFor: { "mix left": 10 } },
  },
  {
    names: ["mix left", "mix right"],
    connector: "XLR",
    by,
    ohms,
    said: { ties: ["send knob", "own mix"], mistakenFor: { "main left": 15 } },
  },
];

const mixLink = (index: number): Socket => ({
  ...linkOutput(`digital ${index + 1}`, ["mix left", "mix right"]),
  ties: ["send knob", "own mix"],
});

/**
 * A console with XLR outputs: two channels, a main pair, a stereo send as a pair, the same send on digital links to stage boxes and personal
 * mixers, and a headphone socket. With phantom power on, its inputs carry 48 V.
 */
export const mixingConsole = kindOf(
  "source",
  {
    balancing: { choices: balancings, typical: "actively balanced" },
    "leg ohms": legs,
    supply: { choices: supplies, typical: "mains-earthed" },
    links: { unit: "outputs", typical: 1, least: 0, most: 64 },
    "phantom power": { choices: ["off", "on"], typical: "off" },
    "input ohms": inputOhms,
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  (values) => {
    const pairs = pairsOf(values.balancing, values["leg ohms"]);
    const phantom = values["phantom power"] === "on" ? ({ harms: "phantom power" } as const) : {};
    const input = (name: string, partner: string): Socket => ({
      ...balancedInput(name, "XLR", values["input ohms"], partner),
      ...phantom,
    });
    return {
      plugs: [],
      sockets: [
        input("1", "2"),
        input("2", "1"),
        {
          ...stereoOutput({
            name: "phones",
            ohms: values["output ohms"],
            buses: ["phones left", "phones right"],
          }),
          ties: ["headphone knob", "solo takes it over"],
        },
        ...pairs.flatMap(pairSockets),
        ...Array.from({ length: values.links }, (_, index) => mixLink(index)),
      ],
      body: powered(values.supply),
      takes: ["1", "2"].map((name) => differenceAt(name, "XLR")),
      controls: deskControls,
      through,
      faults: [...deskFaults, ...phonesFaults("phones"), ...pairs.flatMap(pairFaults)],
      look: 20,
    };
  },
);

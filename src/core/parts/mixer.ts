import { powered, supplies } from "./boxes.ts";
import { at, deskBuses, deskControls, deskFaults, listened, mixOf, padded } from "./desk.ts";
import { balancedInput, differenceAt, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import type { Buses, Control, Fault } from "./part.ts";
import { deadOutput, phonesFaults } from "./socket-faults.ts";
import { type Balancing, balancings, legs, monoOutput } from "./stages.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { switchFault } from "./switch-faults.ts";

/** What the channels do to the two inputs, as gains to each bus. */
function through(control: Control): Buses {
  const mix = mixOf(control);
  const {
    "phones left": phonesLeft = [],
    "phones right": phonesRight = [],
    ...mains
  } = deskBuses(mix, control);
  const [left, right] = listened(mix, control);
  const monitor = control("monitor level") * control("dim");
  return {
    ...mains,
    send: at(mix.before, control("send level")),
    "phones left": phonesLeft,
    "phones right": phonesRight,
    "monitor left": at(left, monitor),
    "monitor right": at(right, monitor),
  };
}

/** Odds: common practice, no source. */
const monitorFaults: readonly Fault[] = [
  switchFault("monitor knob down", "monitor level", 0, 40),
  switchFault("dim on", "dim", padded, 12),
];

const pairsOf = (by: Balancing, ohms: number): readonly [main: Pair, monitor: Pair] => [
  {
    names: ["main left", "main right"],
    connector: "jack",
    by,
    ohms,
    said: { ties: ["main fader"], mistakenFor: { send: 10 } },
  },
  {
    names: ["monitor left", "monitor right"],
    connector: "jack",
    by,
    ohms,
    said: { ties: ["monitor knob", "solo takes it over"], mistakenFor: { send: 10 } },
  },
];

/**
 * A small mixer: two channels panned apart, a headphone socket, a mono send, a pair of main outputs and a pair for monitors with a knob of
 * its own. Sends take a channel before its pan. Its outputs with one signal are driven as the maker chose.
 */
export const mixer = kindOf(
  "source",
  {
    balancing: { choices: balancings, typical: "impedance-balanced" },
    "leg ohms": legs,
    supply: { choices: supplies, typical: "mains-earthed" },
    "input ohms": inputOhms,
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  ({ balancing: by, "leg ohms": ohms, supply, "input ohms": into, "output ohms": phonesOhms }) => {
    const pairs = pairsOf(by, ohms);
    return {
      plugs: [],
      sockets: [
        balancedInput("1", "jack", into, "2"),
        balancedInput("2", "jack", into, "1"),
        {
          ...stereoOutput({
            name: "phones",
            ohms: phonesOhms,
            buses: ["phones left", "phones right"],
          }),
          mistakenFor: { send: 80, "main left": 30 },
          ties: ["headphone knob", "solo takes it over", "hiss past half"],
        },
        {
          name: "send",
          side: "out",
          ties: ["send knob", "own mix"],
          ...monoOutput({ name: "send", connector: "jack", bus: "send", by, ohms }),
        },
        ...pairs.flatMap(pairSockets),
      ],
      body: powered(supply),
      takes: ["1", "2"].map((name) => differenceAt(name, "jack")),
      controls: { ...deskControls, "monitor level": 1, dim: 1 },
      through,
      faults: [
        ...deskFaults,
        ...monitorFaults,
        ...phonesFaults("phones"),
        deadOutput("send", "jack"),
        ...pairs.flatMap(pairFaults),
      ],
      look: 15,
    };
  },
);

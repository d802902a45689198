import { powered, supplies } from "./boxes.ts";
import { computerControls, computerFaults, computerSides } from "./computer.ts";
import { kindOf } from "./kind.ts";
import { type Pair, pairFaults, pairSockets } from "./pairs.ts";
import type { Buses, Control, Fault } from "./part.ts";
import { inOrder, pannedPair, turnedBy } from "./sides.ts";
import { phonesFaults } from "./socket-faults.ts";
import { balancings, legs } from "./stages.ts";
import { stereoOutput } from "./stereo-outputs.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** The settings of the computer, then of the interface's own mixer and knobs. 'direct' is 1 while the playback is heard in full. */
const controls = {
  ...computerControls,
  pair: 1,
  direct: 1,
  "left pan": -1,
  "right pan": 1,
  "left channel": 1,
  "right channel": 1,
  "monitor level": 1,
  "phones level": 1,
};

function through(control: Control): Buses {
  const on = control("pair") * control("direct");
  const sides = inOrder(
    computerSides(control),
    turnedBy(control("left channel"), control("right channel")),
    pannedPair(control("left pan"), control("right pan")),
    turnedBy(on, on),
  );
  const at = (row: readonly number[], level: string) => row.map((gain) => gain * control(level));
  return {
    left: at(sides.left, "phones level"),
    right: at(sides.right, "phones level"),
    "line left": at(sides.left, "monitor level"),
    "line right": at(sides.right, "monitor level"),
  };
}

/** Odds: common practice, no source. */
const settings: readonly Fault[] = [
  ...computerFaults.filter(({ name }) => name !== "volume down"),
  switchFault("volume down", "phones level", 0, 100),
  switchFault("monitor knob down", "monitor level", 0, 60),
  setFault("wrong output pair", { pair: 0 }, 50, { repair: 20 }),
  setFault("direct monitor turned to the inputs", { direct: 0 }, 40),
  switchFault("left panned to the middle", "left pan", 0, 10),
  switchFault("right panned to the middle", "right pan", 0, 10),
  setFault("both channels panned to the middle", { "left pan": 0, "right pan": 0 }, 30, {
    slot: "left pan",
  }),
  switchFault("left channel down", "left channel", 0, 12),
  switchFault("right channel down", "right channel", 0, 12),
];

/**
 * A sound interface of a computer: a pair of line outputs behind a monitor knob, a headphone socket behind its own, a mixer in software in
 * front of both, and a direct monitor between the playback and its inputs. Fed and powered from a computer on a two-pin charger unless told otherwise.
 */
export const soundInterface = kindOf(
  "source",
  {
    balancing: { choices: balancings, typical: "impedance-balanced" },
    "leg ohms": legs,
    supply: { choices: supplies, typical: "floating" },
    "output ohms": { unit: "Ω", typical: 10, least: 0.1, most: 1000 },
  },
  ({ balancing: by, "leg ohms": ohms, supply, "output ohms": phonesOhms }) => {
    const lines: Pair = {
      names: ["line left", "line right"],
      connector: "jack",
      by,
      ohms,
      said: { ties: ["monitor knob"], mistakenFor: { phones: 20 } },
    };
    return {
      plugs: [],
      sockets: [
        {
          ...stereoOutput({ name: "phones", ohms: phonesOhms }),
          ties: ["headphone knob"],
          mistakenFor: { "line left": 30 },
        },
        ...pairSockets(lines),
      ],
      body: powered(supply),
      takes: [],
      controls,
      through,
      faults: [...settings, ...phonesFaults("phones"), ...pairFaults(lines)],
      look: 15,
    };
  },
);

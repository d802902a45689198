import type { Circuit } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { driven, loaded, mainsEarth, sleeve } from "./boxes.ts";
import type { Buses, Part, Socket } from "./part.ts";
import { point } from "./part.ts";
import { switchFault } from "./switch-faults.ts";

export const balancings = ["impedance-balanced", "actively balanced"] as const;
/** What drives the ring of a balanced output: a resistor alone, or the same signal inverted. */
export type Balancing = (typeof balancings)[number];

/** Source resistance of a leg. Handbook, section 4. */
const legOhms: Readonly<Record<Balancing, Ohms>> = {
  "impedance-balanced": 150,
  "actively balanced": 100,
};
const inputOhms: Ohms = 10_000;

function balanced(name: string, bus: string, by: Balancing): Circuit {
  const ohms = legOhms[by];
  const cold =
    by === "actively balanced"
      ? driven(name, "ring", ohms, { [bus]: -1 })
      : loaded(name, "ring", ohms);
  return [driven(name, "tip", ohms, { [bus]: 1 }), cold, sleeve(name)];
}

const input = (name: string, partner: string): Socket => ({
  name,
  kind: "TRS",
  side: "in",
  partner,
  circuit: [loaded(name, "tip", inputOhms), loaded(name, "ring", inputOhms), sleeve(name)],
});

const pair = (name: string, partner: string, by: Balancing): Socket => ({
  name,
  kind: "TRS",
  side: "out",
  partner,
  mistakenFor: { send: 10 },
  circuit: balanced(name, name, by),
});

/** A pan law of constant power: equal and 3 dB down in the middle (common practice, no source). */
const panned = (pan: number): readonly [left: number, right: number] => {
  const angle = ((pan + 1) * Math.PI) / 4;
  return [Math.cos(angle), Math.sin(angle)];
};

/** What the channels do to the two inputs, as gains to each bus. */
function buses(control: (name: string) => number): Buses {
  const one = control("left channel") * control("left polarity");
  const two = control("right channel") * control("right polarity");
  const [oneLeft, oneRight] = panned(control("left pan"));
  const [twoLeft, twoRight] = panned(control("right pan"));
  const left = [one * oneLeft, two * twoLeft];
  const right = [one * oneRight, two * twoRight];
  return {
    "main left": left,
    "main right": right,
    send: [one, two],
    ...phones(left, right, control),
  };
}

/** The headphone socket follows the main pair, in mono if asked, until a solo takes it over. */
function phones(left: number[], right: number[], control: (name: string) => number): Buses {
  const soloed = [control("left solo"), control("right solo")];
  const level = control("phones level");
  const side = (own: number[], other: number[]) =>
    own.map((gain, at) => {
      if (soloed.some((on) => on === 1)) return level * (soloed[at] ?? 0);
      return level * (control("mono") === 1 ? (gain + (other[at] ?? 0)) / 2 : gain);
    });
  return { "phones left": side(left, right), "phones right": side(right, left) };
}

const faults = [
  switchFault("mono", "mono", 1, 60),
  switchFault("polarity button on the left", "left polarity", -1, 15),
  switchFault("polarity button on the right", "right polarity", -1, 15),
  switchFault("left panned hard right", "left pan", 1, 12),
  switchFault("right panned hard left", "right pan", -1, 12),
  switchFault("left panned to the middle", "left pan", 0, 30),
  switchFault("right panned to the middle", "right pan", 0, 30),
  switchFault("left soloed", "left solo", 1, 40),
  switchFault("right soloed", "right solo", 1, 40),
  switchFault("left channel down", "left channel", 0, 40),
  switchFault("right channel down", "right channel", 0, 40),
  switchFault("volume down", "phones level", 0, 100),
];

/**
 * A small mixer: two channels panned apart, a headphone socket, a mono send and a pair of main outputs. Sends take a channel
 * before its pan. Its balanced outputs are impedance-balanced or actively balanced, as the maker chose.
 */
export const mixer = (by: Balancing = "impedance-balanced"): Part => ({
  kind: "mixer",
  plugs: [],
  sockets: [
    input("1", "2"),
    input("2", "1"),
    {
      name: "phones",
      kind: "TRS",
      side: "out",
      mistakenFor: { send: 80, "main left": 30 },
      circuit: [
        driven("phones", "tip", 10, { "phones left": 1 }),
        driven("phones", "ring", 10, { "phones right": 1 }),
        sleeve("phones"),
      ],
    },
    { name: "send", kind: "TRS", side: "out", circuit: balanced("send", "send", by) },
    pair("main left", "main right", by),
    pair("main right", "main left", by),
  ],
  body: [mainsEarth()],
  takes: ["1", "2"].map((name) => ({ plus: point(name, "tip"), minus: point(name, "ring") })),
  controls: {
    mono: 0,
    "left polarity": 1,
    "right polarity": 1,
    "left pan": -1,
    "right pan": 1,
    "left solo": 0,
    "right solo": 0,
    "left channel": 1,
    "right channel": 1,
    "phones level": 1,
  },
  through: buses,
  faults,
  look: 15,
});

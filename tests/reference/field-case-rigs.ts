import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";

/** Laptop, mixer, and headphones straight in the mixer's headphone socket. */
const intoTheMixer: Rig = {
  name: "headphones in the mixer",
  parts: [
    { id: "laptop", kind: "laptop" },
    { id: "insert lead", kind: "insert Y" },
    { id: "mixer", kind: "mixer", settings: { balancing: "actively balanced" } },
    { id: "headphones 1", kind: "headphones" },
  ],
  plugged: [
    { part: "insert lead", plug: "stem", into: "laptop", socket: "phones" },
    { part: "insert lead", plug: "left", into: "mixer", socket: "1" },
    { part: "insert lead", plug: "right", into: "mixer", socket: "2" },
    { part: "headphones 1", plug: "plug", into: "mixer", socket: "phones" },
  ],
  positions: straightIn.positions,
};

/** Laptop and amplifier, with a lead between. */
const throughAnAmplifier: Rig = {
  name: "one lead and an amplifier",
  parts: [
    { id: "laptop", kind: "laptop" },
    { id: "feed lead", kind: "TRS lead" },
    { id: "amplifier", kind: "headphone amplifier", settings: { outputs: 1 } },
    { id: "headphones 1", kind: "headphones" },
  ],
  plugged: [
    { part: "feed lead", plug: "near", into: "laptop", socket: "phones" },
    { part: "feed lead", plug: "far", into: "amplifier", socket: "in" },
    { part: "headphones 1", plug: "plug", into: "amplifier", socket: "output 1" },
  ],
  positions: straightIn.positions,
};

const table = fromHeadphoneSocket("two at a table", ["one", "two"]);
const plainTable: Rig = {
  ...table,
  parts: table.parts.map((part) =>
    part.kind === "mixer" ? { ...part, settings: { balancing: "impedance-balanced" } } : part,
  ),
};

/** Each case's set-up in parts of ours, and which of our faults its cause is. */
export const setUps: Readonly<
  Record<string, readonly [rig: Rig, cause: (fault: RigFault) => boolean]>
> = {
  "FC-02": [intoTheMixer, ({ name, at }) => name === "wrong socket" && at.endsWith("send")],
  "FC-10": [straightIn, ({ name }) => name === "not home, return off"],
  "FC-12": [straightIn, ({ name }) => name === "sleeve open"],
  "FC-13": [straightIn, ({ name }) => name === "sleeve open"],
  "FC-15": [straightIn, ({ name }) => name === "sleeve open"],
  "FC-20": [straightIn, ({ name }) => name === "tip open"],
  "FC-21": [straightIn, ({ name }) => name === "tip and ring exchanged"],
  "FC-23": [throughAnAmplifier, ({ name }) => name === "left side of the output dead"],
  "FC-26": [throughAnAmplifier, ({ name }) => name === "lead with two contacts"],
  "FC-28": [plainTable, ({ name, at }) => name === "wrong socket" && at.endsWith("send")],
  "FC-29": [straightIn, ({ name }) => name === "tip and ring exchanged"],
  "FC-32": [straightIn, ({ name }) => name === "worn backwards"],
  "FC-34": [straightIn, ({ name }) => name.endsWith("driver inverted")],
  "FC-36": [table, ({ name }) => name.startsWith("polarity button")],
  "FC-38": [straightIn, ({ name }) => name.startsWith("balance off")],
  "FC-40": [straightIn, ({ name }) => name === "balance far to the right"],
  "FC-43": [straightIn, ({ part, name }) => part === "laptop" && name === "mono"],
};

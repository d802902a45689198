import type { PartKind } from "#core/parts/catalogue.ts";
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

/** One set of headphones in one socket of one box. */
const straightInto = (kind: PartKind, socket: string, worn: PartKind = "headphones"): Rig => ({
  name: `${worn} in a ${kind}`,
  parts: [
    { id: kind, kind },
    { id: "headphones 1", kind: worn },
  ],
  plugged: [
    {
      part: "headphones 1",
      plug: worn === "wireless headset" ? "link" : "plug",
      into: kind,
      socket,
    },
  ],
  positions: straightIn.positions,
});

/** Set-ups that these parts newly cover, each with its cause: made before their score was first printed. */
export const newSetUps: typeof setUps = {
  "FC-01": [table, ({ name, at }) => name === "wrong socket" && at.endsWith("send")],
  "FC-31": [
    straightInto("personal mixer", "phones"),
    ({ name }) => name === "sides exchanged in the digital patch",
  ],
  "FC-42": [
    straightInto("phone", "phones"),
    ({ name }) => name === "call holds the output in mono",
  ],
  "FC-44": [
    straightInto("sound interface", "phones"),
    ({ name }) => name === "application fills the left side only",
  ],
  "FC-46": [
    straightInto("laptop", "wireless", "wireless headset"),
    ({ name }) => name === "call profile in both ears",
  ],
  "FC-48": [
    straightInto("sound interface", "phones"),
    ({ name }) => /^(balance|right channel down|right panned)/.test(name),
  ],
  "FC-50": [straightIn, ({ name }) => name === "wrong output device"],
  "FC-59": [straightIn, ({ name }) => name === "left ear hears less"],
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

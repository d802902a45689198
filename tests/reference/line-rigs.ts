import type { Rig } from "#core/rig/rig.ts";
import { drawn, listener, type Piece, type Said, twoLeads } from "./drawn.ts";

const interfaceLines = ["interface", "line left", "line right"] as const;
const boxInputs = ["box", "in left", "in right"] as const;

/** Only the left of two jacks: it carries both sides at an output, and feeds both at an input. */
const alone: readonly Rig[] = [
  drawn(
    "left/mono alone into a left jack alone",
    ["box's"],
    {
      parts: { keyboard: ["instrument", { supply: "mains-earthed" }], lead: "TS lead" },
      plugged: ["lead: near > keyboard: left/mono", "lead: far > box: in left"],
    },
    listener("box", ["headphone amplifier", { input: "left and right jacks" }]),
  ),
  drawn(
    "one line output into a balanced left jack alone",
    ["pack's"],
    {
      parts: { interface: "sound interface", lead: "TRS lead", box: ["transmitter", { links: 1 }] },
      plugged: ["lead: near > interface: line left", "lead: far > box: in left"],
    },
    {
      parts: { pack: "belt pack", "pack's": "headset" },
      plugged: ["pack: link > box: link 1", "pack's: plug > pack: phones"],
    },
  ),
];

/** A lead with a stem and two plugs, the stem at either end. */
const forked = (
  kind: Said,
  from: readonly [box: string, left: string, right: string],
  stem: string,
): Piece => ({
  parts: { fork: kind },
  plugged: [
    `fork: left > ${from[0]}: ${from[1]}`,
    `fork: right > ${from[0]}: ${from[2]}`,
    `fork: stem > ${stem}`,
  ],
});

const forks: readonly Rig[] = [
  drawn(
    "player, RCA to one stereo jack",
    ["box's"],
    { parts: { player: "player" }, plugged: [] },
    forked("TRS to two RCA lead", ["player", "left", "right"], "box: in"),
    listener("box"),
  ),
  drawn(
    "laptop into RCA inputs",
    ["box's"],
    { parts: { laptop: "laptop" }, plugged: [] },
    forked(["TRS to two RCA lead", { stemSize: "3.5 mm" }], boxInputs, "laptop: phones"),
    listener("box", ["headphone amplifier", { input: "RCA pair", supply: "mains-earthed" }]),
  ),
  drawn(
    "instrument, jacks to RCA inputs",
    ["box's"],
    {
      parts: { keyboard: "instrument", lead: "two TS to two RCA lead" },
      plugged: [
        "lead: near left > keyboard: left/mono",
        "lead: near right > keyboard: right",
        "lead: far left > box: in left",
        "lead: far right > box: in right",
      ],
    },
    listener("box", ["headphone amplifier", { input: "RCA pair" }]),
  ),
  ...(["stereo jack", "one balanced jack"] as const).map((input) =>
    drawn(
      `both line outputs on one tip, into a ${input}`,
      ["box's"],
      { parts: { interface: "sound interface" }, plugged: [] },
      forked("mono sum lead", interfaceLines, "box: in"),
      listener("box", ["headphone amplifier", { input }]),
    ),
  ),
];

/** Leads of one plug at each end that are nobody's first choice there. */
const odd: readonly Rig[] = [
  drawn(
    "a headphone socket by a TS lead",
    ["box's"],
    {
      parts: { mixer: "mixer", lead: "TS lead" },
      plugged: ["lead: near > mixer: phones", "lead: far > box: in"],
    },
    listener("box"),
  ),
  drawn(
    "one XLR output to both sides",
    ["box's"],
    {
      parts: {
        console: ["console", { balancing: "impedance-balanced" }],
        lead: "XLR to both ears lead",
      },
      plugged: ["lead: near > console: mix right", "lead: far > box: in"],
    },
    listener("box"),
  ),
  drawn(
    "an amplifier's balanced headphone output into another",
    ["box's"],
    {
      parts: {
        phone: "phone",
        lead: ["TRS lead", { nearSize: "3.5 mm" }],
        first: ["headphone amplifier", { "balanced output": "fitted", supply: "mains-earthed" }],
      },
      plugged: ["lead: near > phone: phones", "lead: far > first: in"],
    },
    twoLeads("XLR lead", "second", ["first", "balanced left", "balanced right"], boxInputs),
    listener("box", ["headphone amplifier", { input: "XLR pair", supply: "mains-earthed" }]),
  ),
];

/** Own mixers on one console's digital links, each on its own supply. */
const ownMixers = (supplies: readonly string[]): Rig => {
  const names = supplies.map((supply) => `own mixer, ${supply}`);
  return drawn(
    "own mixers on digital links",
    names.map((id) => `${id}'s`),
    {
      parts: { console: ["console", { links: supplies.length }] },
      plugged: [],
    },
    ...names.map(
      (id, at): Piece => ({
        parts: {
          [id]: [
            "personal mixer",
            { supply: supplies[at] ?? "", ...(at === 0 ? { size: "3.5 mm" } : {}) },
          ],
          [`${id}'s`]: at === 0 ? "in-ears" : "headphones",
        },
        plugged: [`${id}: link > console: digital ${at + 1}`, `${id}'s: plug > ${id}: phones`],
      }),
    ),
  );
};

/** What is neither a stage by its right lead nor an input by its right feed. */
export const lineRigs: readonly Rig[] = [
  ...alone,
  ...forks,
  ...odd,
  ownMixers(["mains-earthed", "battery"]),
];

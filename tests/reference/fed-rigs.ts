import { type InputKind, inputKinds } from "#core/parts/inputs.ts";
import type { Rig } from "#core/rig/rig.ts";
import { drawn, type Piece, type Said, turn, twoLeads } from "./drawn.ts";

const supplies = ["battery", "mains-earthed", "floating"] as const;

/** What feeds a box that takes its programme in by such sockets. */
function feedFor(input: InputKind, supply: (typeof supplies)[number]): Piece {
  const pair = ["box", "in left", "in right"] as const;
  const from = (source: Said, leads: Piece): Piece => ({
    ...leads,
    parts: { source, ...leads.parts },
  });
  switch (input) {
    case "stereo jack":
      return {
        parts: { source: ["laptop", { supply }], lead: ["TRS lead", { nearSize: "3.5 mm" }] },
        plugged: ["lead: near > source: phones", "lead: far > box: in"],
      };
    case "left and right jacks":
      return from(
        ["instrument", { supply }],
        twoLeads("TS lead", "lead", ["source", "left/mono", "right"], pair),
      );
    case "balanced left and right jacks":
      return from(
        ["sound interface", { supply }],
        twoLeads("TRS lead", "lead", ["source", "line left", "line right"], pair),
      );
    case "XLR pair":
      return from(
        ["console", { supply }],
        twoLeads("XLR lead", "lead", ["source", "main left", "main right"], pair),
      );
    case "RCA pair":
      return {
        parts: { source: ["player", { supply }], lead: "RCA pair lead" },
        plugged: (["left", "right"] as const).flatMap((side) => [
          `lead: near ${side} > source: ${side}`,
          `lead: far ${side} > box: in ${side}`,
        ]),
      };
    case "one balanced jack":
      return {
        parts: { source: ["console", { supply }], lead: "XLR to TRS lead" },
        plugged: ["lead: near > source: main left", "lead: far > box: in"],
      };
  }
}

/** Boxes that take a stereo feed in, and how somebody hears each. */
const boxes = {
  "headphone amplifier": {
    parts: { worn: "headphones" },
    plugged: ["worn: plug > box: output 2"],
  },
  transmitter: {
    parts: { pack: ["belt pack", { size: "6.35 mm" }], worn: "headphones" },
    plugged: ["pack: link > box: link 2", "worn: plug > pack: phones"],
  },
  "link sender": {
    parts: { "own mixer": "personal mixer", worn: "headphones" },
    plugged: ["own mixer: link > box: link 2", "worn: plug > own mixer: phones"],
  },
  "loudspeaker amplifier": {
    parts: { worn: "headphones" },
    plugged: ["worn: plug > box: speaker left"],
  },
} as const satisfies Readonly<Record<string, Piece>>;

const more = {
  "headphone amplifier": { outputs: 2, balance: "fitted", blend: "fitted" },
  transmitter: { links: 2 },
  "link sender": { links: 2 },
  "loudspeaker amplifier": {},
} as const;

const kinds = Object.keys(boxes) as (keyof typeof boxes)[];

/** Every input of every box that has the choice, and behind each a way to somebody's ears. */
export const fedRigs: readonly Rig[] = inputKinds.flatMap((input, at) =>
  kinds
    .filter(
      (kind) => input !== "one balanced jack" || (kind !== "transmitter" && kind !== "link sender"),
    )
    .map((kind, which) =>
      drawn(
        `${input} of a ${kind}`,
        ["worn"],
        feedFor(input, turn(supplies, at + which)),
        {
          parts: {
            box: [kind, { input, supply: turn(supplies, at + 2 * which), ...more[kind] }],
          },
          plugged: [],
        },
        boxes[kind],
      ),
    ),
);

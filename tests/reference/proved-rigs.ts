import type { Rig } from "#core/rig/rig.ts";
import { drawn, type Piece, type Said, twoLeads } from "./drawn.ts";

const box = ["box", "in left", "in right"] as const;
const earthed = { supply: "mains-earthed" } as const;

/** What feeds two sockets or one of a kind, by a lead that is to be proved. */
const feeds = {
  "stereo jack": {
    parts: { source: ["sound interface", earthed], lead: "TRS lead" },
    plugged: ["lead: near > source: phones", "lead: far > box: in"],
  },
  "left and right jacks": {
    parts: { source: ["sound interface", earthed], lead: "insert Y" },
    plugged: [
      "lead: stem > source: phones",
      "lead: left > box: in left",
      "lead: right > box: in right",
    ],
  },
  "balanced left and right jacks": {
    ...twoLeads("TRS lead", "lead", ["source", "line left", "line right"], box),
    parts: {
      source: ["sound interface", { ...earthed, balancing: "actively balanced" }],
      "lead left": "TRS lead",
      "lead right": "TRS lead",
    },
  },
  "XLR pair": {
    parts: { source: "console", lead: "XLR lead" },
    plugged: ["lead: near > source: main left", "lead: far > box: in left"],
  },
  XLR: {
    parts: { source: ["console", { balancing: "impedance-balanced" }], lead: "XLR lead" },
    plugged: ["lead: near > source: main left", "lead: far > box: in"],
  },
  "RCA pair": {
    parts: { source: ["player", earthed], lead: "RCA pair lead" },
    plugged: (["left", "right"] as const).flatMap((side) => [
      `lead: near ${side} > source: ${side}`,
      `lead: far ${side} > box: in ${side}`,
    ]),
  },
} as const satisfies Readonly<Record<string, Piece>>;

const proved = (input: keyof typeof feeds, said: Said, more = ""): Rig =>
  drawn(`a lead proved: ${input} of ${[said].flat()[0]}${more}`, ["box"], feeds[input], {
    parts: { box: said },
    plugged: [],
  });

/** Leads that stand between a source and an instrument: every choice of each. */
export const provedRigs: readonly Rig[] = [
  proved("stereo jack", "load box"),
  proved("XLR", ["load box", { input: "XLR" }]),
  proved("left and right jacks", ["load box", { input: "left and right jacks" }]),
  proved("RCA pair", ["load box", { input: "RCA pair", grounds: "apart" }]),
  proved("stereo jack", ["line inputs", { input: "stereo jack" }]),
  proved(
    "stereo jack",
    ["line inputs", { input: "stereo jack", grounds: "apart" }],
    ", on its own ground",
  ),
  proved("left and right jacks", ["line inputs", { input: "left and right jacks" }]),
  proved("balanced left and right jacks", "line inputs"),
  proved("XLR pair", ["line inputs", { input: "XLR pair" }]),
  proved("RCA pair", ["line inputs", { input: "RCA pair" }]),
];

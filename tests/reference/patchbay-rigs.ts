import type { Settings } from "#core/parts/kind.ts";
import type { Rig } from "#core/rig/rig.ts";
import { drawn, listener, type Piece, twoLeads } from "./drawn.ts";

const interfaceLines = ["interface", "line left", "line right"] as const;
const boxInputs = ["box", "in left", "in right"] as const;
const balanced = { input: "balanced left and right jacks" } as const;

/** An interface behind the upper row, an amplifier behind the lower, and what stands at the front. */
const patched = (normalling: string, front: keyof typeof fronts, settings: Settings = {}): Rig =>
  drawn(
    `patchbay, ${normalling}, ${front}`,
    front === "another amplifier beside" ? ["box's", "other's"] : ["box's"],
    { parts: { interface: "sound interface" }, plugged: [] },
    twoLeads("TRS lead", "out", interfaceLines, ["bay", "behind above 1", "behind above 2"]),
    { parts: { bay: ["patchbay", { normalling, ...settings }] }, plugged: [] },
    twoLeads("TRS lead", "in", ["bay", "behind below 1", "behind below 2"], boxInputs),
    ...fronts[front],
    listener("box", ["headphone amplifier", balanced]),
  );

/** From the upper row to the lower: the normals are broken, and the leads go on. */
const across = twoLeads(
  "TRS lead",
  "patch",
  ["bay", "above 1", "above 2"],
  ["bay", "below 1", "below 2"],
);

/** A lead to another amplifier from the upper row: it breaks a normal, or listens beside it. */
const beside: Piece = {
  parts: { tap: "TRS lead", ...listener("other").parts },
  plugged: ["tap: near > bay: above 1", "tap: far > other: in", ...listener("other").plugged],
};

const fronts = {
  "nothing at the front": [],
  "a lead across": [across],
  "another amplifier beside": [beside],
} as const;

/** Normals whole and broken, for every way to have them. */
export const patchbayRigs: readonly Rig[] = [
  patched("half-normalled", "nothing at the front"),
  patched("half-normalled", "another amplifier beside", { pairs: 3 }),
  patched("half-normalled", "a lead across"),
  patched("normalled", "nothing at the front"),
  patched("normalled", "another amplifier beside"),
  patched("normalled", "a lead across", { carries: "microphones" }),
  patched("not normalled", "a lead across"),
];

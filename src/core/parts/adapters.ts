import { open } from "#core/circuit/circuit.ts";
import { kindOf } from "./kind.ts";
import { leadOf } from "./lead.ts";
import { odds } from "./lead-faults.ts";
import { jackSize } from "./leads.ts";
import type { Fault } from "./part.ts";
import { point } from "./part.ts";
import { type JackSize, jackSizes } from "./plugs.ts";
import { type Run, usualRun } from "./wire.ts";

/** Solid metal, 5 cm: all there is of it are its contacts. */
export const solid: Run = { ...usualRun, metres: 0.05 };

const otherSize = (size: JackSize): JackSize => jackSizes.find((one) => one !== size) ?? size;

const through = (contact: "tip" | "ring" | "sleeve") =>
  [contact, point("plug", contact), point("socket", contact)] as const;

/** Unscrewed by a turn: nothing but the return lets go. Odds: common practice, no source. */
const loose: Fault = {
  name: "adapter loose",
  at: "socket",
  edits: [{ edit: "ohms", element: "sleeve", ohms: open }],
  weight: 40,
  slot: "socket sleeve",
  seen: true,
  repair: 5,
};

/**
 * From one size of jack to the other, screwed on or pushed on: a 3.5 mm socket with a 6.35 mm plug, or the reverse. In some, the sleeve's
 * spring sits deep, where a plug of four contacts has its second ring (handbook, section 2).
 */
export const sizeAdapter = kindOf(
  "adapter",
  {
    plugSize: jackSize,
    spring: { choices: ["TRS", "TRS with a deep spring"], typical: "TRS" },
  },
  ({ plugSize, spring }) =>
    leadOf(
      {
        ends: [
          { name: "plug", kind: "TRS", size: plugSize },
          { name: "socket", kind: "TRS", size: otherSize(plugSize), socket: spring },
        ],
        wires: [through("tip"), through("ring"), through("sleeve")],
        weak: [{ at: "socket", end: "socket", odds: odds.moulded }],
        more: [loose],
      },
      solid,
    ),
);

/** Left to both ears: one signal on a TS plug, at tip and ring of its socket. */
export const monoAdapter = kindOf("adapter", { size: jackSize }, ({ size }) =>
  leadOf(
    {
      ends: [
        { name: "plug", kind: "TS", size },
        { name: "socket", kind: "TRS", size, socket: "TRS" },
      ],
      wires: [
        through("tip"),
        ["ring", point("plug", "tip"), point("socket", "ring")],
        through("sleeve"),
      ],
      weak: [
        { at: "socket", end: "socket", odds: odds.moulded },
        { at: "plug", end: "plug", odds: odds.worn },
      ],
    },
    solid,
  ),
);

/** Both sides of a stereo socket joined to make mono: left and right drive each other, hard on the output. */
export const stereoToMonoAdapter = kindOf("adapter", { size: jackSize }, ({ size }) =>
  leadOf(
    {
      ends: [
        { name: "plug", kind: "TRS", size },
        { name: "socket", kind: "TRS", size, socket: "TRS" },
      ],
      wires: [
        ["tip", point("plug", "tip"), "both"],
        ["ring", point("plug", "ring"), "both"],
        ["left", "both", point("socket", "tip"), 0],
        ["right", "both", point("socket", "ring"), 0],
        through("sleeve"),
      ],
      weak: [
        { at: "plug", end: "plug", odds: odds.moulded },
        { at: "socket", end: "socket", odds: odds.worn },
      ],
    },
    solid,
  ),
);

import type { Control, Fault } from "./part.ts";
import { type Sides, turnedBy } from "./sides.ts";
import { setFault } from "./switch-faults.ts";

/** What a box's input stages have to fail: a control for each side. */
export const inputControls = { "left input": 1, "right input": 1 };

/** What the input stages pass on. */
export const inputSides = (control: Control): Sides =>
  turnedBy(control("left input"), control("right input"));

const hidden = { seen: false, repair: 60 };

/** A side of the input that passes nothing on: its stage, or a spring of its socket. Odds: common practice, no source. */
export const inputFaults: readonly Fault[] = [
  setFault("left side of the input dead", { "left input": 0 }, 4, hidden),
  setFault("right side of the input dead", { "right input": 0 }, 4, hidden),
];

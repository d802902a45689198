import type { Control, Fault } from "./part.ts";
import { switchFault } from "./switch-faults.ts";

type Row = readonly [ofLeft: number, ofRight: number];

/** Gains inside a box with two sides: what leaves on each, of what comes in on the left and on the right. */
export interface Sides {
  readonly left: Row;
  readonly right: Row;
}

/** Each side stays what it is. */
export const apart: Sides = { left: [1, 0], right: [0, 1] };

/** One of the two sides, or neither, by number: 0 is left, 1 is right, anything else is nothing. */
const only = (side: number): Row => [side === 0 ? 1 : 0, side === 1 ? 1 : 0];

/** Each side takes one of the two, by number: 0 is left, 1 is right, -1 is nothing. */
export const picked = (left: number, right: number): Sides => ({
  left: only(left),
  right: only(right),
});

/** With 1, half of left and right in both sides; with 0, each stays what it is (common practice, no source). */
export const inMono = (on: number): Sides => ({
  left: [1 - on / 2, on / 2],
  right: [on / 2, 1 - on / 2],
});

/** Each side turned up or down. */
export const turnedBy = (left: number, right: number): Sides => ({
  left: [left, 0],
  right: [0, right],
});

/** A pan law of constant power: equal and 3 dB down in the middle (common practice, no source). -1 is hard left, 1 hard right. */
export const panned = (pan: number): readonly [left: number, right: number] => {
  const angle = ((pan + 1) * Math.PI) / 4;
  return [Math.cos(angle), Math.sin(angle)];
};

/** Two channels, left and right, each with a pan. */
export const pannedPair = (one: number, two: number): Sides => {
  const [first, second] = [panned(one), panned(two)];
  return { left: [first[0], second[0]], right: [first[1], second[1]] };
};

const row = ([ofLeft, ofRight]: Row, before: Sides): Row => [
  ofLeft * before.left[0] + ofRight * before.right[0],
  ofLeft * before.left[1] + ofRight * before.right[1],
];

/** One after the other, the first first. */
export const inOrder = (...all: readonly Sides[]): Sides =>
  all.reduce((before, then) => ({ left: row(then.left, before), right: row(then.right, before) }));

/** Six decibels down on one side: a balance that has drifted. */
const drifted = 0.5;
/** Fourteen decibels down: a balance pushed far over. */
const pushed = 0.2;

/** What a balance has to turn: a control for each side. */
export const balanceControls = { left: 1, right: 1 };

/** What the balance controls do. */
export const balanced = (control: Control): Sides => turnedBy(control("left"), control("right"));

/** A balance knob or slider that is not in its middle. Odds: common practice, no source. */
export const balanceFaults: readonly Fault[] = [
  switchFault("balance hard left", "right", 0, 12),
  switchFault("balance hard right", "left", 0, 12),
  switchFault("balance far to the left", "right", pushed, 8),
  switchFault("balance far to the right", "left", pushed, 8),
  switchFault("balance off to the left", "right", drifted, 20),
  switchFault("balance off to the right", "left", drifted, 20),
];

import type { Buses, Control, Fault } from "./part.ts";
import { panned } from "./sides.ts";
import { switchFault } from "./switch-faults.ts";

/** Two channels of a desk, left and right, and what stands between them and its outputs. */
export const deskControls = {
  mono: 0,
  "left polarity": 1,
  "right polarity": 1,
  "left pan": -1,
  "right pan": 1,
  "left solo": 0,
  "right solo": 0,
  "left channel": 1,
  "right channel": 1,
  "left pad": 1,
  "right pad": 1,
  "main level": 1,
  "send level": 1,
  "phones level": 1,
  power: 1,
};

/** Twenty decibels: a pad, or a dim switch (common practice, no source). */
export const padded = 0.1;

/** What two channels become, as gains from each: before their pans, and summed on left and right. */
export interface Mix {
  readonly before: readonly [number, number];
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
}

/** The channels of a desk. */
export function mixOf(control: Control): Mix {
  const one = channel("left", control);
  const two = channel("right", control);
  const [oneLeft, oneRight] = panned(control("left pan"));
  const [twoLeft, twoRight] = panned(control("right pan"));
  return {
    before: [one, two],
    left: [one * oneLeft, two * twoLeft],
    right: [one * oneRight, two * twoRight],
  };
}

const channel = (side: string, control: Control): number =>
  control(`${side} channel`) *
  control(`${side} polarity`) *
  control(`${side} pad`) *
  control("power");

/** Gains turned by a control. */
export const at = (row: readonly number[], level: number): number[] =>
  row.map((gain) => gain * level);

/** What is listened to at the desk: the mix, in mono if asked, until a solo takes it over. In order: left, right. */
export function listened({ left, right }: Mix, control: Control): readonly [number[], number[]] {
  const soloed = [control("left solo"), control("right solo")];
  if (soloed.some((on) => on === 1))
    return [soloed, soloed].map((row) => at(row, control("power"))) as [number[], number[]];
  if (control("mono") !== 1) return [[...left], [...right]];
  const sum = left.map((gain, from) => (gain + (right[from] ?? 0)) / 2);
  return [sum, sum];
}

/** The main pair and the headphone socket of a desk. */
export function deskBuses(mix: Mix, control: Control): Buses {
  const [left, right] = listened(mix, control);
  return {
    "main left": at(mix.left, control("main level")),
    "main right": at(mix.right, control("main level")),
    "phones left": at(left, control("phones level")),
    "phones right": at(right, control("phones level")),
  };
}

/** What stands wrong at a desk. Odds: common practice, no source. */
export const deskFaults: readonly Fault[] = [
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
  switchFault("pad in on the left channel", "left pad", padded, 8),
  switchFault("pad in on the right channel", "right pad", padded, 8),
  switchFault("volume down", "phones level", 0, 100),
  switchFault("main fader down", "main level", 0, 40),
  switchFault("send knob down", "send level", 0, 40),
  switchFault("power off", "power", 0, 20),
];

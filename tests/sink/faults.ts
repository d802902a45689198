import type { PartKind } from "#core/parts/catalogue.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Wire } from "./wire.ts";

/** Gains from left and right to each side: `[[left from left, left from right], [right from left, right from right]]`. */
type Matrix = readonly (readonly [number, number])[];

/** A wire with something wrong with it, and what must be measured. */
export interface FaultyWire extends Wire {
  readonly matrix: Matrix;
  /** What every entry is multiplied by besides, as size alone. */
  readonly size?: (at: Hertz) => number;
  /** By how much longer what comes back lasts; parts of a million, nought unless given. */
  readonly drift?: number;
  /** It comes at least so late; seconds. */
  readonly late?: number;
  /** At 50 Hz; decibels of full scale. */
  readonly hum?: number;
  /** Of the tones to the noise up to 15 kHz; decibels. */
  readonly ratio?: number;
  /** What the core must suspect first, were it this lead in a load box: a TRS lead unless told otherwise. */
  readonly verdict: string;
  readonly lead?: PartKind;
}

const straight: Matrix = [
  [1, 0],
  [0, 1],
];
const [rate, corner] = [48_000, 1000];

/** How `sox` makes its `lowpass`: two poles by the bilinear transform, as flat as can be. */
function lowPass(at: Hertz): number {
  const warped = Math.tan((Math.PI * at) / rate) / Math.tan((Math.PI * corner) / rate);
  return 1 / Math.sqrt(1 + warped ** 4);
}

/** The level of the tones as they are sent; decibels of full scale. */
const sent = -50;
/** White noise has so much of itself below 15 kHz; decibels. */
const below15 = 10 * Math.log10(15_000 / (rate / 2));

export const faultyWires: Readonly<Record<string, FaultyWire>> = {
  healthy: { effects: "remix 1 2", matrix: straight, verdict: "healthy" },
  "sides swapped": {
    effects: "remix 2 1",
    verdict: "lead: tip and ring exchanged",
    matrix: [
      [0, 1],
      [1, 0],
    ],
  },
  mono: {
    effects: "remix 1v0.5,2v0.5 1v0.5,2v0.5",
    verdict: "lead: tip and ring shorted",
    matrix: [
      [0.5, 0.5],
      [0.5, 0.5],
    ],
  },
  "left lost": {
    effects: "remix 0 2",
    verdict: "lead: tip open",
    matrix: [
      [0, 0],
      [0, 1],
    ],
  },
  "right lost": {
    effects: "remix 1 0",
    verdict: "lead: ring open",
    matrix: [
      [1, 0],
      [0, 0],
    ],
  },
  "left upside down": {
    effects: "remix 1v-1 2",
    lead: "RCA pair lead",
    verdict: "lead: tip and shell exchanged",
    matrix: [
      [-1, 0],
      [0, 1],
    ],
  },
  "right upside down": {
    effects: "remix 1 2v-1",
    lead: "RCA pair lead",
    verdict: "lead: tip and shell exchanged",
    matrix: [
      [1, 0],
      [0, -1],
    ],
  },
  "return lost, as a load box shows it": {
    effects: "remix 1v0.5,2v-0.5 1v-0.5,2v0.5",
    verdict: "lead: sleeve open",
    matrix: [
      [0.5, -0.5],
      [-0.5, 0.5],
    ],
  },
  "right six decibels down": {
    effects: "remix 1 2v0.5",
    verdict: "position 1: something not on the list",
    matrix: [
      [1, 0],
      [0, 0.5],
    ],
  },
  "crosstalk, 20 dB down and upside down": {
    effects: "remix 1v1,2v-0.1 1v-0.1,2v1",
    verdict: "position 1: something not on the list",
    matrix: [
      [1, -0.1],
      [-0.1, 1],
    ],
  },
  "a low-pass at 1 kHz": {
    effects: `lowpass ${corner}`,
    matrix: straight,
    size: lowPass,
    verdict: "position 1: something not on the list",
  },
  "hum added": {
    effects: "remix 1 2",
    added: "sine 50 sine 50 vol 0.001414",
    matrix: straight,
    hum: -60,
    verdict: "healthy",
  },
  "noise 20 dB below": {
    effects: "remix 1 2",
    noise: sent - 20 - below15,
    matrix: straight,
    ratio: 20,
    verdict: "healthy",
  },
  "a clock 100 parts in a million off": {
    effects: "speed 0.9999",
    matrix: straight,
    drift: 100,
    verdict: "healthy",
  },
  "300 ms late": { effects: "delay 0.3 0.3", matrix: straight, late: 0.6, verdict: "healthy" },
};

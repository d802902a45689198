import type { FlexBaseline, FlexSide } from "./flex-baseline.ts";
import { sizeAt } from "./flex-learning.ts";
import { type FlexRecords, place } from "./flex-record.ts";

/** One side as it is expected now. */
interface Live {
  readonly side: FlexSide;
  readonly sizes: Float64Array;
  /** Roots of each tone's share in the power. */
  readonly weights: Float64Array;
  /** Sizes on the other channel, had it come over whole, against those on its own. */
  readonly ratio: number;
  /** Complex, of both tones. */
  readonly crosstalk: Float64Array;
}

/**
 * Compares windows with what is expected, and lets that follow slowly. Phase is never followed: a tone that comes over is compared with the
 * same tone on its own channel in the same window, so delay, drift of a clock and samples lost on the way are in both and fall out.
 */
export class FlexReading {
  readonly sides: readonly [Live, Live];

  constructor({ sides: [left, right] }: FlexBaseline) {
    this.sides = [live(left), live(right)];
  }

  /** Writes the row of a window. */
  read(tones: Float64Array, records: FlexRecords, hop: number): void {
    const { values } = records;
    const row = records.row(hop);
    let worst = 0;
    for (let which = 0; which < 2; which += 1) {
      const one = this.sides[which] as Live;
      const level = readOwn(one, tones, values, row, which);
      const over = readOver(one, tones, values, row, which);
      values[row + place.level + which] = level;
      worst = Math.max(worst, 1 - level, over);
    }
    values[row + place.deviation] = worst;
  }

  /** Moves what is expected by a share of a deviation, given as a row of numbers or the first of one. */
  follow(values: Float64Array, row: number, share: number): void {
    for (let which = 0; which < 2; which += 1) {
      const one = this.sides[which] as Live;
      for (let tone = 0; tone < 2; tone += 1) {
        const weight = one.weights[tone] as number;
        const by = (share * (values[row + place.own + 2 * which + tone] as number)) / weight;
        one.sizes[tone] = (one.sizes[tone] as number) * Math.max(1 + by, 0.001);
        for (let part = 2 * tone; part < 2 * tone + 2; part += 1)
          one.crosstalk[part] =
            (one.crosstalk[part] as number) +
            (share * (values[row + place.over + 4 * which + part] as number)) / weight;
      }
      weigh(one);
    }
  }

  /** The power of a side's tones on its own channel. */
  power(which: 0 | 1): number {
    return powerOf(this.sides[which]);
  }
}

function live(side: FlexSide): Live {
  const one: Live = {
    side,
    sizes: Float64Array.from(side.sizes),
    weights: new Float64Array(2),
    ratio: side.acrossSizes[0] / side.sizes[0],
    crosstalk: Float64Array.from(side.crosstalk.flatMap(({ re, im }) => [re, im])),
  };
  weigh(one);
  return one;
}

const powerOf = ({ sizes }: Live): number => (sizes[0] as number) ** 2 + (sizes[1] as number) ** 2;

function weigh(one: Live): void {
  const root = Math.sqrt(powerOf(one));
  one.weights[0] = (one.sizes[0] as number) / root;
  one.weights[1] = (one.sizes[1] as number) / root;
}

/** Where in the tones' array a side's tone stands on a channel. */
const toneAt = ({ side }: Live, channel: 0 | 1, tone: number): number =>
  8 * channel + 2 * (side.first + tone);

function readOwn(
  one: Live,
  tones: Float64Array,
  values: Float64Array,
  row: number,
  which: number,
): number {
  const { own } = one.side;
  if (own === undefined) return 1;
  let [level, power] = [1, 0];
  for (let tone = 0; tone < 2; tone += 1) {
    const weight = one.weights[tone] as number;
    const size = sizeAt(tones, toneAt(one, own, tone)) / (one.sizes[tone] as number);
    const off = weight * (size - 1);
    values[row + place.own + 2 * which + tone] = off;
    level += weight * off;
    power += (weight * size) ** 2;
  }
  values[row + place.power + which] = power;
  return level;
}

/** What comes over; how far it is from what came over before. */
function readOver(
  one: Live,
  tones: Float64Array,
  values: Float64Array,
  row: number,
  which: number,
): number {
  const { own, across } = one.side;
  if (across === undefined) return 0;
  let [re, im, signed, power] = [0, 0, 0, 0];
  for (let tone = 0; tone < 2; tone += 1) {
    const weight = one.weights[tone] as number;
    const whole = one.ratio * (one.sizes[tone] as number);
    const at = toneAt(one, across, tone);
    const [x, y] = [tones[at] as number, tones[at + 1] as number];
    const from = own === undefined ? at : toneAt(one, own, tone);
    const [u, v] = [tones[from] as number, tones[from + 1] as number];
    const scale = 1 / ((Math.sqrt(u * u + v * v) || 1) * whole);
    const [real, imaginary] = [(x * u + y * v) * scale, (y * u - x * v) * scale];
    const offReal = weight * (real - (one.crosstalk[2 * tone] as number));
    const offImaginary = weight * (imaginary - (one.crosstalk[2 * tone + 1] as number));
    values[row + place.over + 4 * which + 2 * tone] = offReal;
    values[row + place.over + 4 * which + 2 * tone + 1] = offImaginary;
    re += weight * offReal;
    im += weight * offImaginary;
    signed += weight * weight * real;
    power += (weight / whole) ** 2 * (x * x + y * y);
  }
  values[row + place.overPower + which] = power;
  values[row + place.signed + which] = signed;
  return Math.sqrt(re * re + im * im);
}

import type { FlexBaseline } from "./flex-baseline.ts";
import { hop, noiseEvery } from "./flex-front.ts";
import { middleOfNoise } from "./flex-learning.ts";
import type { FlexReading } from "./flex-reading.ts";
import { type FlexRecords, place } from "./flex-record.ts";
import { reach } from "./flex-window.ts";

/** Nothing is said of what is less off than this: 0.9 dB. */
const least = 0.1;
/**
 * Nor of what is less than so many times the noise's standard deviation. A normal value is beyond seven once in 8e11 tries; an hour has 7 million
 * windows, of which one in three is new, and four levels each.
 */
export const sigmas = 7;
/** From here on a side that falls by half would not be seen. */
const tooMuch = 0.5;

/** Empty places kept, 50 ms of them: half before what is judged, half after. */
const held = Math.round(0.05 / (hop * noiseEvery));
/** Windows from one to the next that shares no time with it: twice the reach. */
const apart = Math.round((2 * reach) / hop);
/** The own deviation of levels is taken over a second. */
const share = hop / 1;

/**
 * How much of a deviation noise makes, from what is there now: from the empty frequencies of the last 50 ms, by their middle, so that the edges of a break, which
 * reach them, do not count; and from how the levels themselves tremble while nothing happens, which no empty frequency tells.
 */
export class FlexNoise {
  readonly #reading: FlexReading;
  readonly #channels: readonly [number, number];
  readonly #last = new Float64Array(held);
  readonly #sorted = new Float64Array(held);
  #next = 0;
  /** Variance of a level by the empty frequencies, and by the levels. */
  #empty: number;
  #own: number;

  constructor({ noise }: FlexBaseline, reading: FlexReading) {
    this.#reading = reading;
    this.#channels = [0, 1].map((channel) => noise[channel] ?? 0) as [number, number];
    this.#empty = this.#variance(this.#channels);
    this.#own = this.#empty;
    this.#last.fill(this.#empty);
    this.#sorted.fill(this.#empty);
  }

  /** The mean square of noise on a tone, by channel, gives the variance of the worst level. */
  #variance(noise: ArrayLike<number>): number {
    let most = 0;
    for (const { side, ratio } of this.#reading.sides) {
      const power = this.#reading.power(side.first === 0 ? 0 : 1);
      if (side.own !== undefined) most = Math.max(most, (noise[side.own] ?? 0) / (2 * power));
      if (side.across !== undefined)
        most = Math.max(most, (noise[side.across] ?? 0) / (2 * power * ratio * ratio));
    }
    return most;
  }

  /** Takes what the empty frequencies had, at every fourth window. */
  take(noise: Float64Array): void {
    this.#last[this.#next] = this.#variance(noise);
    this.#next = (this.#next + 1) % held;
    this.#sorted.set(this.#last);
    this.#sorted.sort();
    this.#empty = (this.#sorted[held >> 1] as number) / middleOfNoise;
  }

  /**
   * Takes a window in which nothing happens: how far its levels are from those of the last one that shares no time with it, so that a level that is merely
   * another one now does not count.
   */
  quiet(records: FlexRecords, at: number): void {
    let square = 0;
    for (let which = place.level; which < place.level + 2; which += 1)
      square = Math.max(square, (records.at(at, which) - records.at(at - apart, which)) ** 2 / 2);
    const most = 9 * Math.max(this.#own, 1e-12);
    this.#own += share * (Math.min(square, most) - this.#own);
  }

  /** The variance of a level. */
  get variance(): number {
    return Math.max(this.#empty, this.#own);
  }

  /** How far off a window must be. */
  get threshold(): number {
    return Math.max(least, sigmas * Math.sqrt(this.variance));
  }

  /** A break could not be told. */
  get tooNoisy(): boolean {
    return this.threshold > tooMuch;
  }
}

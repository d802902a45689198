import type { Complex } from "#core/units/complex.ts";
import { baselineOf, type FlexBaseline, type FlexMiddles } from "./flex-baseline.ts";
import { type FlexHop, hop, noiseEvery } from "./flex-front.ts";
import type { FlexRefusal } from "./flex-names.ts";

/** One second. */
const hops = Math.round(1 / hop);
/** More samples at full scale in that time are no accident. */
const mostClipped = 10;

/**
 * The first second: what comes in is taken as right. Middles of all windows are taken, not means, so that a break in it does not count.
 */
export class FlexLearning {
  readonly #channels: number;
  readonly #sizes: readonly Float64Array[];
  readonly #noise: readonly Float64Array[];
  /** Sums of each tone on the other channel, phase against the tone on this one. */
  readonly #crossed = new Float64Array(16);
  #count = 0;
  #noises = 0;
  #clipped = 0;
  #same = 0;

  constructor(channels: number) {
    this.#channels = channels;
    this.#sizes = Array.from({ length: 8 }, () => new Float64Array(hops));
    this.#noise = [new Float64Array(hops), new Float64Array(hops)];
  }

  /** Takes a window; after the last one says how things are, or why nothing can be watched. */
  take(at: FlexHop): FlexBaseline | FlexRefusal | undefined {
    for (const [index, sizes] of this.#sizes.entries())
      sizes[this.#count] = sizeAt(at.tones, 2 * index);
    if (at.hop % noiseEvery === 0) {
      for (const [channel, noise] of this.#noise.entries())
        noise[this.#noises] = at.noise[channel] ?? 0;
      this.#noises += 1;
    }
    this.#addCrossed(at.tones);
    this.#clipped += at.clipped;
    this.#same += at.same ? 1 : 0;
    this.#count += 1;
    return this.#count < hops ? undefined : this.#result();
  }

  #addCrossed(tones: Float64Array): void {
    for (let at = 0; at < 16; at += 2) {
      const other = at < 8 ? at + 8 : at - 8;
      const [re, im] = [tones[at] as number, tones[at + 1] as number];
      const [x, y] = [tones[other] as number, tones[other + 1] as number];
      const size = Math.hypot(re, im) || 1;
      this.#crossed[at] = (this.#crossed[at] as number) + (x * re + y * im) / size;
      this.#crossed[at + 1] = (this.#crossed[at + 1] as number) + (y * re - x * im) / size;
    }
  }

  #result(): FlexBaseline | FlexRefusal {
    if (this.#clipped > mostClipped) return "clipped";
    const middles = this.#middles();
    const found = baselineOf(middles);
    return found === "sides mixed" && this.#same === this.#count
      ? baselineOf(firstOf(middles))
      : found;
  }

  #middles(): FlexMiddles {
    const channels = Array.from({ length: this.#channels }, (_, channel) => channel);
    const complex = (at: number): Complex => ({
      re: (this.#crossed[at] ?? 0) / this.#count,
      im: (this.#crossed[at + 1] ?? 0) / this.#count,
    });
    return {
      sizes: channels.map((channel) =>
        this.#sizes.slice(4 * channel, 4 * channel + 4).map((all) => middle(all)),
      ),
      noise: channels.map(
        (channel) => middle(this.#noise[channel]?.subarray(0, this.#noises)) / middleOfNoise,
      ),
      crossed: channels.map((channel) => [0, 2, 4, 6].map((tone) => complex(8 * channel + tone))),
    };
  }
}

/** Of the mean of two squared sizes of noise, the middle against the mean: 0.839 (a gamma distribution of shape two). */
export const middleOfNoise = 0.839;

/** Two channels with the same samples are one input, handed over twice. */
const firstOf = ({ sizes, noise, crossed }: FlexMiddles): FlexMiddles => ({
  sizes: sizes.slice(0, 1),
  noise: noise.slice(0, 1),
  crossed: crossed.slice(0, 1),
});

export const sizeAt = (tones: Float64Array, at: number): number => {
  const [re, im] = [tones[at] as number, tones[at + 1] as number];
  return Math.sqrt(re * re + im * im);
};

const middle = (values: Float64Array = new Float64Array(1)): number =>
  values.toSorted()[values.length >> 1] ?? 0;

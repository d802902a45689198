import type { Hertz, Seconds } from "#core/units/units.ts";
import { FlexWindow } from "./flex-window.ts";

/** From the middle of one window to the next. */
export const hop: Seconds = 0.0005;

/** Noise is taken at every fourth window, and so every two milliseconds. */
export const noiseEvery = 4;

/** A sample from here on is taken for one that the converter cut off. */
const full = 0.999;

/** What is measured at one window. The arrays are written anew at the next. */
export interface FlexHop {
  /** Counts windows; its middle is this many hops after the first sample, to the nearest sample. */
  hop: number;
  /** Eight complex sizes: the four tones on the first channel, then on the second. */
  readonly tones: Float64Array;
  /** Of each channel, as `FlexWindow.noise`; renewed at every fourth window. */
  readonly noise: Float64Array;
  /** Samples at full scale since the last window, on all channels. */
  clipped: number;
  /** The channels had the same samples since the last window. */
  same: boolean;
}

/** Cuts a stream of blocks of any length into windows and measures each. What comes out does not depend on the blocks. */
export class FlexFront {
  readonly #rate: Hertz;
  readonly #window: FlexWindow;
  readonly #channels: readonly Float32Array[];
  readonly #take: (at: FlexHop) => void;
  /** Samples held, and which one of the stream is the first of them. */
  #held = 0;
  #first = 0;
  #next: number;
  readonly #hop: FlexHop = {
    hop: 0,
    tones: new Float64Array(16),
    noise: new Float64Array(2),
    clipped: 0,
    same: false,
  };

  /** @throws RangeError for other than one or two channels, or a rate at which 7 kHz or a millisecond do not fit */
  constructor(rate: Hertz, channels: number, take: (at: FlexHop) => void) {
    if (!(rate >= slowest && rate <= fastest))
      throw new RangeError(`sampling rate ${rate} Hz is not within ${slowest} to ${fastest} Hz`);
    if (channels !== 1 && channels !== 2) throw new RangeError(`${channels} channels: one or two`);
    this.#rate = rate;
    this.#window = new FlexWindow(rate);
    this.#take = take;
    const room = 4 * this.#window.reach + 4096;
    this.#channels = Array.from({ length: channels }, () => new Float32Array(room));
    this.#next = Math.ceil(this.#window.reach / (hop * rate)) + 1;
  }

  /** @throws RangeError where channels are missing or differ in length */
  push(block: readonly Float32Array[]): void {
    const length = block[0]?.length ?? 0;
    if (block.length !== this.#channels.length || block.some((one) => one.length !== length))
      throw new RangeError(`a block of ${block.map((one) => one.length)} samples does not fit`);
    for (let done = 0; done < length; ) {
      const room = (this.#channels[0]?.length ?? 0) - this.#held;
      const count = Math.min(room, length - done);
      for (const [at, channel] of this.#channels.entries())
        copy(block[at] as Float32Array, done, count, channel, this.#held);
      this.#held += count;
      done += count;
      this.#measure();
    }
  }

  #measure(): void {
    const { reach } = this.#window;
    let middle = this.#middle();
    for (; middle + reach < this.#held; middle = this.#middle()) {
      this.#at(middle);
      this.#next += 1;
    }
    this.#forget(middle - reach);
  }

  /** Of the next window, among the samples held. */
  #middle(): number {
    return Math.round(this.#next * hop * this.#rate) - this.#first;
  }

  #at(middle: number): void {
    const at = this.#hop;
    at.hop = this.#next;
    at.clipped = 0;
    const from = middle - Math.floor(hop * this.#rate);
    for (const [index, channel] of this.#channels.entries()) {
      this.#window.tones(channel, middle, at.tones, 8 * index);
      at.clipped += atFull(channel, from, middle);
      if (at.hop % noiseEvery === 0) at.noise[index] = this.#window.noise(channel, middle);
    }
    at.same = alike(this.#channels, from, middle);
    this.#take(at);
  }

  /** Drops what no window will want. */
  #forget(upTo: number): void {
    const kept = upTo - Math.ceil(hop * this.#rate);
    if (kept <= 0) return;
    for (const channel of this.#channels) channel.copyWithin(0, kept, this.#held);
    this.#held -= kept;
    this.#first += kept;
  }
}

const slowest: Hertz = 16_000;
const fastest: Hertz = 768_000;

/** What is no number is taken for silence: one would stay in every mean for good. */
function copy(
  from: Float32Array,
  start: number,
  count: number,
  into: Float32Array,
  at: number,
): void {
  for (let index = 0; index < count; index += 1) {
    const sample = from[start + index] as number;
    into[at + index] = Number.isFinite(sample) ? sample : 0;
  }
}

function atFull(samples: Float32Array, from: number, to: number): number {
  let count = 0;
  for (let at = from; at < to; at += 1) if (Math.abs(samples[at] as number) >= full) count += 1;
  return count;
}

function alike([one, other]: readonly Float32Array[], from: number, to: number): boolean {
  if (one === undefined || other === undefined) return false;
  for (let at = from; at < to; at += 1) if (one[at] !== other[at]) return false;
  return true;
}

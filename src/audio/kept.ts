import type { Capture } from "#core/measurement/capture.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Gaps } from "./recorder.ts";
import type { RecordingBlock } from "./recording-block.ts";

/** So many frames of nothing but zeros, as a browser renders at once. */
const shortestBlank = 128;

/** Takes blocks as they come, tells what they lack, and keeps them if it is to. */
export class Kept {
  readonly #keep: boolean;
  readonly #blocks: RecordingBlock[] = [];
  #first: number | undefined;
  #channels = 0;
  #next = 0;
  #missing = 0;
  #blank = 0;
  #zeros = Number.NEGATIVE_INFINITY;

  constructor(keep: boolean) {
    this.#keep = keep;
  }

  /** Frames from the first that came to the one after the last, those that are missing too. */
  get frames(): number {
    return this.#next - (this.#first ?? this.#next);
  }

  /** Another block; when it begins since the first, in frames. False when it has other channels than those before. */
  take(block: RecordingBlock): number | false {
    const { channels, frame } = block;
    if (this.#first === undefined) {
      this.#first = frame;
      this.#next = frame;
      this.#channels = channels.length;
    }
    if (channels.length !== this.#channels) return false;
    this.#missing += Math.max(0, frame - this.#next);
    this.#next = frame + (channels[0]?.length ?? 0);
    this.#countBlank(channels);
    if (this.#keep) this.#blocks.push(block);
    return frame - this.#first;
  }

  /** What is missing; the browser was given so many seconds, from the first block to the last. */
  gaps(took: number, rate: Hertz): Gaps {
    return { missing: this.#missing, blank: this.#blank, behind: took - this.frames / rate };
  }

  /** All that came, at most so many frames; undefined when it was not to be kept or nothing came. */
  capture(rate: Hertz, most: number): Capture | undefined {
    const length = Math.min(this.frames, most);
    if (!this.#keep || length === 0) return undefined;
    const channels = Array.from({ length: this.#channels }, () => new Float32Array(length));
    for (const block of this.#blocks) {
      const at = block.frame - (this.#first ?? 0);
      for (const [n, samples] of block.channels.entries())
        if (at < length) channels[n]?.set(samples.subarray(0, length - at), at);
    }
    return { channels: trueChannels(channels), rate };
  }

  #countBlank(channels: readonly Float32Array[]): void {
    const length = channels[0]?.length ?? 0;
    for (let n = 0; n < length; n += 1) {
      if (channels.every((channel) => channel[n] === 0)) {
        this.#zeros += 1;
      } else {
        if (this.#zeros >= shortestBlank) this.#blank += this.#zeros;
        this.#zeros = 0;
      }
    }
  }
}

/**
 * The channels there truly are: one input that was doubled on the way is the same sample for sample, which two converters, each
 * with its own noise, never are. Nothing but zeros tells nothing.
 */
function trueChannels(channels: readonly Float32Array[]): readonly Float32Array[] {
  const [first, ...others] = channels;
  if (first === undefined || first.every((sample) => sample === 0)) return channels;
  const doubled = others.every((other) => other.every((sample, n) => sample === first[n]));
  return doubled ? [first] : channels;
}

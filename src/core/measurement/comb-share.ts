import FFT from "fft.js";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { apart, countAt, sentCombs } from "./combs.ts";

/** A recording cut into pieces of one length, a power of two of samples, about so long: a bin is then six hertz wide. */
const about: Seconds = 0.17;

/** What cuts, and how long a piece is. */
export interface Piecewise {
  readonly rate: Hertz;
  readonly time: Seconds;
  readonly size: number;
  /** The spectrum of a piece, under a window; the next call writes over it. */
  spectrum(samples: Float64Array): Float64Array;
  /** Takes samples, and hands on each piece that is whole. */
  push(
    block: readonly Float32Array[],
    use: (piece: readonly Float64Array[], at: number) => void,
  ): void;
  /** How many samples came so far. */
  pushed(): number;
}

function spectrumOf(size: number): Piecewise["spectrum"] {
  const fft = new FFT(size);
  const window = Float64Array.from({ length: size }, (_, n) => Math.sin((Math.PI * n) / size) ** 2);
  const [windowed, spectrum] = [new Float64Array(size), new Float64Array(2 * size)];
  return (samples) => {
    for (let n = 0; n < size; n += 1) windowed[n] = (samples[n] ?? 0) * (window[n] ?? 0);
    fft.realTransform(spectrum as unknown as number[], windowed as unknown as number[]);
    return spectrum;
  };
}

/** Cuts a recording of a rate into pieces as it comes. */
export function piecewise(rate: Hertz, channels: number): Piecewise {
  const size = 2 ** Math.round(Math.log2(about * rate));
  const kept = Array.from({ length: channels }, () => new Float64Array(size));
  let total = 0;
  return {
    rate,
    size,
    time: size / rate,
    spectrum: spectrumOf(size),
    pushed: () => total,
    push: (block, use) => {
      const length = block[0]?.length ?? 0;
      for (let from = 0; from < length; ) {
        const place = total % size;
        const count = Math.min(size - place, length - from);
        for (const [channel, samples] of kept.entries())
          samples.set(block[channel]?.subarray(from, from + count) ?? [], place);
        total += count;
        from += count;
        if (total % size === 0) use(kept, total / size - 1);
      }
    },
  };
}

/** Tones are judged in groups of so many, since not all may come through. */
const group = 15;
/** Noise makes half of the share, and a twentieth more or less of so many tones; a signal as loud as the noise makes nine tenths. */
const enough = 0.73;
/** Less power than this is silence. */
const silence = 1e-16;

/** Power in the three bins about a frequency. */
function powerAbout(spectrum: Float64Array, bin: number): number {
  let sum = 0;
  for (let at = Math.round(bin) - 1; at <= Math.round(bin) + 1; at += 1)
    sum += (spectrum[2 * at] ?? 0) ** 2 + (spectrum[2 * at + 1] ?? 0) ** 2;
  return sum;
}

/** Whether the combs are in a piece: in some group of tones the power of each against that halfway to its neighbours. */
export function combShare(piecewise: Piecewise, samples: Float64Array): boolean {
  const { rate, size } = piecewise;
  const spectrum = piecewise.spectrum(samples);
  const count = countAt(rate);
  const at = (frequency: Hertz) => powerAbout(spectrum, (frequency * size) / rate);
  return sentCombs.some(({ begin }) => {
    for (let from = 0; from + group <= count; from += group)
      if (sharesOf(at, begin + apart * from, silence * size) > enough * group) return true;
    return false;
  });
}

/** The shares of a group of tones from its lowest on, together. */
function sharesOf(at: (frequency: Hertz) => number, lowest: Hertz, least: number): number {
  let shares = 0;
  for (let k = 0; k < group; k += 1) {
    const frequency = lowest + apart * k;
    const tone = at(frequency);
    const beside = (at(frequency - apart / 4) + at(frequency + apart / 4)) / 2;
    if (tone + beside >= least) shares += tone / (tone + beside);
  }
  return shares;
}

import { flexFrequencies } from "#core/signals/flex-tones.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** Half of the window, which is two of these long, and its nulls every half kilohertz from one kilohertz on. */
export const reach: Seconds = 0.001;

/** The tones in the order they are told: the left side's two, then the right side's. */
const tones: readonly Hertz[] = [...flexFrequencies.left, ...flexFrequencies.right];
/** Where nothing is played: whole kilohertz between the tones, so that the window has them at a null too. */
const empty: readonly Hertz[] = [4000, 6000];

/**
 * Sizes and phases of the four tones in two milliseconds under a raised cosine. Why this window: its nulls lie at every whole kilohertz, so each
 * tone is blind to the other three, as in a bare millisecond; but beside them it falls off by 18 dB an octave, so hum 50 dB
 * louder than a plain window would bear does not get in; it is as short as that millisecond between its half heights, and lets a quarter less
 * noise through. Sampled, it keeps its nulls at any rate (they are a hundred decibels deep at 44.1 kHz, where a millisecond is
 * no whole number of samples), and 200 ppm of drift move 7 kHz by 1.4 Hz, which costs it nothing.
 */
export class FlexWindow {
  /** Samples on each side of the middle. */
  readonly reach: number;
  readonly #tones: Tables;
  readonly #empty: Tables;

  constructor(rate: Hertz) {
    this.reach = Math.ceil(reach * rate) - 1;
    const heights = Float64Array.from(
      { length: this.reach + 1 },
      (_, at) => 0.5 + 0.5 * Math.cos((Math.PI * at) / (reach * rate)),
    );
    this.#tones = tablesOf(tones, heights, rate);
    this.#empty = tablesOf([...empty, ...empty], heights, rate);
  }

  /** Writes peak sizes as complex numbers, real and imaginary parts in turn, against a cosine about the middle. */
  tones(samples: Float32Array, middle: number, into: Float64Array, at: number): void {
    fold(samples, middle, this.#tones, into, at);
  }

  /** The square of the size that a tone would be taken to have where there is none: what noise gives. */
  noise(samples: Float32Array, middle: number): number {
    const [a = 0, b = 0, c = 0, d = 0] = fold(samples, middle, this.#empty, found, 0);
    return (a * a + b * b + c * c + d * d) / 2;
  }
}

const found = new Float64Array(8);

/** For each distance from the middle four values, one a tone: the window times the cosine, and times the sine. */
interface Tables {
  readonly cosines: Float64Array;
  readonly sines: Float64Array;
}

function tablesOf(frequencies: readonly Hertz[], heights: Float64Array, rate: Hertz): Tables {
  const sum = heights.reduce((all, height, at) => all + (at === 0 ? height : 2 * height), 0);
  const table = (wave: (turns: number) => number) =>
    Float64Array.from({ length: 4 * heights.length }, (_, index) => {
      const [at, tone] = [index >> 2, index & 3];
      const turns = 2 * Math.PI * (((frequencies[tone] ?? 0) * at) / rate);
      return (2 * (heights[at] ?? 0) * wave(turns)) / sum;
    });
  return { cosines: table(Math.cos), sines: table(Math.sin) };
}

/** A cosine is the same on both sides of the middle, a sine the opposite: half of the multiplications do. */
function fold(
  samples: Float32Array,
  middle: number,
  { cosines, sines }: Tables,
  into: Float64Array,
  at: number,
): Float64Array {
  const centre = samples[middle] as number;
  let [a, b, c, d] = [0, 1, 2, 3].map((tone) => centre * (cosines[tone] as number)) as [
    number,
    number,
    number,
    number,
  ];
  let [p, q, r, s] = [0, 0, 0, 0];
  for (let place = 4, off = 1; place < cosines.length; place += 4, off += 1) {
    const [after, before] = [samples[middle + off] as number, samples[middle - off] as number];
    const [even, odd] = [after + before, before - after];
    a += even * (cosines[place] as number);
    b += even * (cosines[place + 1] as number);
    c += even * (cosines[place + 2] as number);
    d += even * (cosines[place + 3] as number);
    p += odd * (sines[place] as number);
    q += odd * (sines[place + 1] as number);
    r += odd * (sines[place + 2] as number);
    s += odd * (sines[place + 3] as number);
  }
  into[at] = a;
  into[at + 1] = p;
  into[at + 2] = b;
  into[at + 3] = q;
  into[at + 4] = c;
  into[at + 5] = r;
  into[at + 6] = d;
  into[at + 7] = s;
  return into;
}

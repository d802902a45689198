import { swell } from "#core/signals/multitone.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { stretches } from "./combs.ts";
import { type Gridded, gridRate } from "./grid.ts";
import type { Hum } from "./return.ts";
import { mean } from "./statistics.ts";

/** One sample of so many is kept, after four running means over as many: tones then lie far below what folds onto the mains. */
const every = 32;
const means = 4;
const slow: Hertz = gridRate / every;
/** A whole number of seconds is heard: no tone of a whole hertz leaks into another. */
const heard: Seconds = 3;
/** On the eighth of 50 Hz a tone folds. */
const harmonics = 7;
/** The mains keeps within so much; the search goes in steps. */
const reach: Hertz = 0.5;
const step: Hertz = 0.1;
/** Harmonics on which no product of distortion lies, up to the third order: one of them there is hum. */
const telling = { 50: [1, 2], 60: [1, 2, 3] } as const;
/** Harmonics on which no tone lies: by them the frequency is found. */
const free = { 50: [1, 3], 60: [1, 2, 3] } as const;
/** A line counts that is so much stronger than what is beside it. */
const standsOut = 16;
/** Less is no hum: −110 dBFS. */
const least = 1e-11;
/** Beside a line, at a third of a hertz times a whole number, where tones leak nothing. */
const beside: readonly Hertz[] = [-14 / 3, -11 / 3, -10 / 3, 10 / 3, 11 / 3, 14 / 3];

/** The four running means as one row of weights. */
const weights = Array.from({ length: means }).reduce<readonly number[]>(
  (row) =>
    Array.from({ length: row.length + every - 1 }, (_, at) => {
      let sum = 0;
      for (let k = 0; k < every; k += 1) sum += row[at - k] ?? 0;
      return sum / every;
    }),
  [1],
);

/** A piece of an input at the slow rate, under a raised cosine. */
interface Slow {
  readonly samples: Float64Array;
  readonly weight: number;
}

function slowed({ channels, first }: Gridded, input: number, from: Seconds, length: Seconds): Slow {
  const samples = channels[input] ?? new Float64Array();
  const begin = Math.round(from * gridRate) - first - (weights.length - 1) / 2;
  const count = Math.floor(length * slow);
  const out = new Float64Array(count);
  let weight = 0;
  for (let n = 0; n < count; n += 1) {
    let sum = 0;
    for (let at = 0; at < weights.length; at += 1)
      sum += (weights[at] ?? 0) * (samples[begin + n * every + at] ?? 0);
    const window = Math.sin((Math.PI * n) / count) ** 2;
    out[n] = window * sum;
    weight += window;
  }
  return { samples: out, weight };
}

/** The mean square of a sine at a frequency. */
function powerOf({ samples, weight }: Slow, frequency: Hertz): number {
  const angle = (2 * Math.PI * frequency) / slow;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  let [x, y, re, im] = [1, 0, 0, 0];
  for (const sample of samples) {
    re += sample * x;
    im += sample * y;
    const next = x * c - y * s;
    y = x * s + y * c;
    x = next;
  }
  const lost =
    (Math.sin(Math.PI * (frequency / slow)) / (every * Math.sin(angle / (2 * every)))) ** means;
  return (2 * (re * re + im * im)) / (weight * lost) ** 2;
}

const powerIn = (pieces: readonly Slow[], frequency: Hertz): number =>
  mean(pieces.map((piece) => powerOf(piece, frequency)));

const floorAt = (pieces: readonly Slow[], frequency: Hertz): number =>
  mean(beside.map((by) => powerIn(pieces, frequency + by)));

/** Between the stretches the tones are silent: the lines they lie on can be heard there. */
const gap = (gridded: Gridded, input: number, late: Seconds): Slow => {
  const from = stretches[0].end + swell + late;
  return slowed(gridded, input, from, stretches[1].start - swell + late - from);
};

/** The frequency of the mains near fifty or sixty hertz at which most of its free lines are, and their power; between steps by a parabola. */
function tuned(pieces: readonly Slow[], about: 50 | 60): { frequency: Hertz; power: number } {
  const count = Math.round(reach / step);
  const powers = Array.from({ length: 2 * count + 1 }, (_, at) =>
    free[about].reduce((sum, n) => sum + powerIn(pieces, n * (about + (at - count) * step)), 0),
  );
  const power = Math.max(...powers);
  const at = powers.indexOf(power);
  const [below = 0, above = 0] = [powers[at - 1], powers[at + 1]].map((one) =>
    Math.log(one ?? power),
  );
  const bend = below + above - 2 * Math.log(power);
  const by = bend < 0 ? (below - above) / (2 * bend) : 0;
  return { frequency: about + (at - count + by) * step, power };
}

/** The hum in an input that comes so late on the grid; nothing where no line of the mains stands out. */
export function humIn(
  gridded: Gridded,
  input: number,
  which: readonly number[],
  late: Seconds,
): Hum | undefined {
  const pieces = which.map((stretch) => {
    const { start } = stretches[stretch] ?? stretches[0];
    return slowed(gridded, input, start + late + 0.5, heard);
  });
  const [fifty, sixty] = [tuned(pieces, 50), tuned(pieces, 60)];
  const mains = fifty.power >= sixty.power ? 50 : 60;
  const { frequency } = mains === 50 ? fifty : sixty;
  const quiet = which.length === 2 ? [gap(gridded, input, late)] : [];
  const levels = Array.from({ length: harmonics }, (_, at) => {
    const n = at + 1;
    const onTone = mains === 50 && n % 5 === 2;
    const heardIn = onTone ? quiet : pieces;
    if (heardIn.length === 0) return undefined;
    const power = powerIn(heardIn, n * frequency);
    const floor = onTone
      ? 4 * floorAt(pieces, n * frequency + 20) * heard
      : floorAt(pieces, n * frequency);
    return power > Math.max(standsOut * floor, least) ? 10 * Math.log10(power) : undefined;
  });
  return telling[mains].some((n) => levels[n - 1] !== undefined)
    ? { mains, frequency, levels }
    : undefined;
}

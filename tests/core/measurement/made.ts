import FFT from "fft.js";
import type { Capture } from "#core/measurement/capture.ts";
import { combs, halves, marks, swell } from "#core/signals/multitone.ts";
import { sizeAt, usable } from "#core/signals/tones.ts";
import type { Complex } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Random } from "#core/units/random.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** A capture as it would come out of a known system: no sample of it is resampled, so the truth is exact. */
export interface Making {
  readonly rate: Hertz;
  readonly duration: Seconds;
  /** When the signal begins, in seconds of the capture. */
  readonly delay: Seconds;
  /** Parts of a million by which the capture lasts longer than what was played. */
  readonly drift: number;
  readonly inputs: number;
  /** From programme (left 0, right 1) to input, at a frequency. */
  readonly gain: (input: number, programme: number, frequency: Hertz) => Complex;
  /** A delay of its own from each programme to each input. */
  readonly late?: (input: number, programme: number) => Seconds;
  /** How far the capture's clock is off a straight line, at its own time. */
  readonly wander?: (time: Seconds) => Seconds;
}

export const making: Making = {
  rate: 48_000,
  duration: 10.4,
  delay: 0.3,
  drift: 0,
  inputs: 2,
  gain: (input, programme) => ({ re: input === programme ? 1 : 0, im: 0 }),
};

/** A comb is the product of its middle tone and what repeats every 8 ms; that at so many points, 68 for each of its own. */
const points = 8192;
const middle = 60;
const round = 1 / 125;
const fft = new FFT(points);

/** One round of a comb behind a system, moved down by its middle tone. */
function roundOf(making: Making, input: number, programme: number, comb: "left" | "right") {
  const [spectrum, out] = [new Float64Array(2 * points), new Float64Array(2 * points)];
  for (const [k, { frequency, peak, turns = 0 }] of combs[comb].entries()) {
    if (frequency >= usable * making.rate) continue;
    const { re, im } = making.gain(input, programme, frequency);
    const angle = 2 * Math.PI * (turns - 0.25);
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const at = 2 * ((k - middle + points) % points);
    const size = points * fromDecibels(peak);
    spectrum[at] = size * (re * c - im * s);
    spectrum[at + 1] = size * (re * s + im * c);
  }
  fft.inverseTransform(out as unknown as number[], spectrum as unknown as number[]);
  return { values: out, carrier: combs[comb][middle]?.frequency ?? 0 };
}

/** Weights of six points for a place between the third and the fourth (Lagrange): right to −160 dB here. */
function between(part: number): readonly number[] {
  const places = [-2, -1, 0, 1, 2, 3];
  return places.map((own) =>
    places.reduce((by, other) => (other === own ? by : (by * (part - other)) / (own - other)), 1),
  );
}
const fine = 4096;
const table = Float64Array.from(
  { length: 6 * (fine + 1) },
  (_, at) => between(Math.floor(at / 6) / fine)[at % 6] ?? 0,
);

/** The comb's value at an instant of the signal's time. */
function valueAt({ values, carrier }: ReturnType<typeof roundOf>, time: Seconds): number {
  const place = ((((time % round) + round) % round) / round) * points;
  const whole = Math.floor(place);
  const phase = (place - whole) * fine;
  const [row, part] = [Math.floor(phase), phase - Math.floor(phase)];
  let [re, im] = [0, 0];
  for (let tap = 0; tap < 6; tap += 1) {
    const at = 2 * ((whole + tap - 2 + points) % points);
    const [one = 0, next = 0] = [table[6 * row + tap], table[6 * row + 6 + tap]];
    const weight = one + part * (next - one);
    re += weight * (values[at] ?? 0);
    im += weight * (values[at + 1] ?? 0);
  }
  const angle = 2 * Math.PI * ((carrier * time) % 1);
  return re * Math.cos(angle) - im * Math.sin(angle);
}

/** The click, as `click.ts` has it, behind a gain. */
function clickAt({ re, im }: Complex, time: Seconds): number {
  if (time < 0 || time > 0.008) return 0;
  const angle = 2 * Math.PI * 1500 * (time - 0.004);
  const size = fromDecibels(-18.5) * Math.sin((Math.PI * time) / 0.008) ** 2;
  return size * (re * Math.cos(angle) - im * Math.sin(angle));
}

/** What one programme makes in an input at an instant of the signal's time. */
function programmeAt(making: Making, input: number, programme: number) {
  const order = programme === 0 ? (["left", "right"] as const) : (["right", "left"] as const);
  const parts = order.map((comb, half) => ({
    round: roundOf(making, input, programme, comb),
    when: { ...halves[half ? 1 : 0], swell },
  }));
  const click = making.gain(input, programme, 1500);
  return (time: Seconds): number => {
    let sum = 0;
    for (const { round, when } of parts) {
      const size = sizeAt(when, time);
      sum += size > 0 ? size * valueAt(round, time) : 0;
    }
    return marks.reduce((all, mark) => all + clickAt(click, time - mark), sum);
  };
}

function addProgramme(samples: Float64Array, making: Making, input: number, programme: number) {
  const late = making.late?.(input, programme) ?? 0;
  const pace = 1 + making.drift / 1e6;
  const clock = (time: Seconds) => time + (making.wander?.(time) ?? 0);
  const at = programmeAt(making, input, programme);
  for (let n = 0; n < samples.length; n += 1)
    samples[n] = (samples[n] ?? 0) + at((clock(n / making.rate) - making.delay) / pace - late);
}

/** The samples of each input, free of noise. */
export function samplesOf(making: Making): readonly Float64Array[] {
  return Array.from({ length: making.inputs }, (_, input) => {
    const samples = new Float64Array(Math.round(making.duration * making.rate));
    for (const programme of [0, 1])
      if (combs.left.some(({ frequency }) => carries(making.gain(input, programme, frequency))))
        addProgramme(samples, making, input, programme);
    return samples;
  });
}

const carries = ({ re, im }: Complex): boolean => re !== 0 || im !== 0;

/** Noise of a normal distribution and a root mean square, two numbers at a time (Box and Muller, 1958). */
export function addNoise(samples: Float64Array, size: number, random: Random): Float64Array {
  for (let n = 0; n < samples.length; n += 2) {
    const far = size * Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    samples[n] = (samples[n] ?? 0) + far * Math.cos(angle);
    if (n + 1 < samples.length) samples[n + 1] = (samples[n + 1] ?? 0) + far * Math.sin(angle);
  }
  return samples;
}

export const captured = (rate: Hertz, channels: readonly Float64Array[]): Capture => ({
  rate,
  channels: channels.map((channel) => Float32Array.from(channel)),
});

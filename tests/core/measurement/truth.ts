import { pivot } from "#core/measurement/clock.ts";
import type { NotMeasured, ReturnMeasurement } from "#core/measurement/measured.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { combs, halves } from "#core/signals/multitone.ts";
import { type Complex, size } from "#core/units/complex.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import type { Hertz } from "#core/units/units.ts";
import { addNoise, captured, type Making, samplesOf } from "./made.ts";

/** The level of each programme, of which a signal-to-noise ratio speaks: white noise up to half the rate. */
export const sentLevel = fromDecibels(-26);

/** A capture with white noise on every input, so many decibels below one programme at full gain. */
export function noisy(making: Making, ratio: number, seed: number) {
  const [random, noise] = [seeded(seed), sentLevel * fromDecibels(-ratio)];
  const channels = samplesOf(making).map((samples) => addNoise(samples, noise, random));
  return captured(making.rate, channels);
}

/** A measurement that must be one. */
export function measuredOf(result: ReturnMeasurement | NotMeasured): ReturnMeasurement {
  if ("refused" in result) throw new Error(`refused: ${JSON.stringify(result)}`);
  return result;
}

export const measure = (making: Making, ratio: number, seed: number): ReturnMeasurement =>
  measuredOf(measureReturn(noisy(making, ratio, seed)));

/** Energy of a stretch, in seconds of steady tone: the swells count three eighths. */
const steady = 4 - 0.02 + 2 * 0.02 * (3 / 8);
const peaks = new Map(
  [...combs.left, ...combs.right].map(({ frequency, peak }) => [frequency, fromDecibels(peak)]),
);
const peakOf = (frequency: Hertz): number => peaks.get(frequency) ?? 0;
const frequencies = [...peaks.keys()];

/**
 * The Cramér-Rao bounds. A gain whose tone has the peak A, over N samples with white noise of variance σ²: 4 σ² / (N A²) for both parts together.
 * The drift is common to all: its information is the sum over tones of (2 π f |H| A)² / (2 σ²) times the spread of time, N T² / 12. It turns a tone, whose
 * stretch's middle lies away from where phases hold.
 */
export function bounds({ rate, inputs, gain, drift }: Making, ratio: number) {
  const variance = (sentLevel * fromDecibels(-ratio)) ** 2;
  const many = rate * steady * (1 + drift / 1e6);
  let information = 0;
  for (let input = 0; input < inputs; input += 1)
    for (const programme of [0, 1])
      for (const frequency of frequencies) {
        const turning = 2 * Math.PI * frequency * size(gain(input, programme, frequency));
        information +=
          ((turning * peakOf(frequency)) ** 2 / (2 * variance)) * many * (steady ** 2 / 12);
      }
  const away = halves.map(({ start, end }) => ((start + end) / 2 - pivot) ** 2);
  return {
    drift: Math.sqrt(1 / information),
    gain: (frequency: Hertz, own: Complex): number =>
      (4 * variance) / (many * peakOf(frequency) ** 2) +
      ((2 * Math.PI * frequency * size(own)) ** 2 * (away[0] ?? 0)) / information,
  };
}

/** What a gain should read, given where in time the measurement says it holds. */
export function expected(making: Making, result: ReturnMeasurement) {
  const at = result.delay.value + (1 + result.drift.value / 1e6) * pivot;
  const off = (at - making.delay) / (1 + making.drift / 1e6) - pivot;
  return (input: number, programme: number, frequency: Hertz): Complex => {
    const { re, im } = making.gain(input, programme, frequency);
    const angle = 2 * Math.PI * frequency * (off - (making.late?.(input, programme) ?? 0));
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return { re: re * c - im * s, im: re * s + im * c };
  };
}

/** All errors of a measurement: of each gain, with the error it states and the bound, as squares. */
export function errorsOf(making: Making, ratio: number, result: ReturnMeasurement) {
  const [bound, truth] = [bounds(making, ratio), expected(making, result)];
  return result.responses.flatMap(({ frequency, gains }) =>
    gains.flatMap((row, input) =>
      row.flatMap((gain, programme) => {
        if (gain === undefined) return [];
        const right = truth(input, programme, frequency);
        const [re, im] = [gain.re - right.re, gain.im - right.im];
        return [
          {
            frequency,
            input,
            programme,
            parts: [re / gain.error, im / gain.error],
            square: re * re + im * im,
            bound: bound.gain(frequency, right),
          },
        ];
      }),
    ),
  );
}

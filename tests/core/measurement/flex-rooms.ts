import { renderedLevel } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import { normals } from "./flex-streams.ts";

/** Something that comes in beside the signal, of a level against it. */
export type Beside = (channel: number, time: Seconds) => number;

const scaled = (samples: Float64Array, rate: Hertz, level: Decibels): Beside => {
  const power = samples.reduce((sum, one) => sum + one * one, 0) / samples.length;
  const by = fromDecibels(renderedLevel + level) / Math.sqrt(power);
  return (_, time) => by * (samples[Math.round(time * rate) % samples.length] ?? 0);
};

/** 50 Hz and its harmonics, each weaker by the square of its number, up to 3 kHz. */
export function humOf(rate: Hertz, level: Decibels): Beside {
  const samples = Float64Array.from({ length: rate }, (_, n) => {
    let sum = 0;
    for (let harmonic = 1; harmonic <= 60; harmonic += 1)
      sum +=
        Math.sin(2 * Math.PI * ((50 * harmonic * n) / rate + 0.37 * harmonic ** 2)) / harmonic ** 2;
    return sum;
  });
  return scaled(samples, rate, level);
}

/** One vowel: where its resonances lie. */
const vowels: readonly (readonly Hertz[])[] = [
  [730, 1090, 2440, 3400],
  [270, 2290, 3010, 3700],
  [300, 870, 2240, 3300],
  [530, 1840, 2480, 3500],
];

/** How strong a voice is at a frequency: falls by 12 dB an octave, with resonances 100 Hz wide. */
const spoken = (frequency: Hertz, formants: readonly Hertz[]): number =>
  formants.reduce((sum, at) => sum + 1 / (1 + ((frequency - at) / 100) ** 2), 0.02) *
  (200 / frequency);

/**
 * Like speech, not of anybody: four syllables a second, each a vowel with a gliding pitch that starts within a few milliseconds, and between them
 * hisses up to 8 kHz.
 */
export function speechOf(rate: Hertz, seconds: Seconds, level: Decibels, seed: number): Beside {
  const random = seeded(seed);
  const samples = new Float64Array(Math.round(seconds * rate));
  for (let start = 0; start < samples.length; start += Math.round(0.25 * rate)) {
    addVowel(samples, rate, start, random);
    if (random() < 0.5) addHiss(samples, rate, start + Math.round(0.17 * rate), random);
  }
  return scaled(samples, rate, level);
}

function addVowel(samples: Float64Array, rate: Hertz, start: number, random: Random): void {
  const formants = vowels[Math.floor(random() * vowels.length)] ?? [];
  const [pitch, glide, loud] = [90 + 130 * random(), 0.8 + 0.4 * random(), 0.3 + random()];
  const length = Math.round((0.1 + 0.07 * random()) * rate);
  const strengths = Array.from({ length: Math.floor(8000 / pitch) }, (_, at) =>
    spoken(pitch * (at + 1), formants),
  );
  for (let n = 0; n < length && start + n < samples.length; n += 1) {
    const swell = Math.min(1, n / (0.005 * rate)) * (1 - n / length);
    const turns = (pitch * n * (1 + ((glide - 1) * n) / (2 * length))) / rate;
    let sum = 0;
    for (const [at, strength] of strengths.entries())
      sum += strength * Math.cos(2 * Math.PI * (((at + 1) * turns) % 1));
    samples[start + n] = (samples[start + n] ?? 0) + loud * swell * sum;
  }
}

function addHiss(samples: Float64Array, rate: Hertz, start: number, random: Random): void {
  const normal = normals(random);
  let [last, before] = [0, 0];
  const turn = (2 * Math.PI * 5500) / rate;
  for (let n = 0; n < 0.07 * rate && start + n < samples.length; n += 1) {
    const now = 1.6 * Math.cos(turn) * last - 0.7 * before + normal();
    before = last;
    last = now;
    samples[start + n] = (samples[start + n] ?? 0) + 0.02 * now;
  }
}

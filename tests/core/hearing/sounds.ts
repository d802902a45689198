import type { EarsAt } from "#core/hearing/response.ts";
import type { Sound } from "#core/signals/sound.ts";
import { type Complex, real, zero } from "#core/units/complex.ts";
import { seeded } from "#core/units/random.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

export const rate: Hertz = 48_000;

/** A channel of so many samples. */
export const channel = (count: number, sample: (n: number) => number): Float32Array =>
  Float32Array.from({ length: count }, (_, n) => sample(n));

/** Noise, other on each side, between plus and minus `size`. */
export function noise(count: number, seed: number, size = 0.1): Sound {
  const random = seeded(seed);
  const side = () => channel(count, () => (2 * random() - 1) * size);
  return { left: side(), right: side(), rate };
}

/** Samples of a tone with a phase in turns. */
export const sine = (frequency: Hertz, count: number, amplitude: number, turns = 0) =>
  channel(count, (n) => amplitude * Math.sin(2 * Math.PI * ((frequency * n) / rate + turns)));

/** A chain that does the same at every frequency. */
export const flat =
  (ll: number, lr: number, rl: number, rr: number): EarsAt =>
  () => [
    [real(ll), real(lr)],
    [real(rl), real(rr)],
  ];

/** A chain that does the same to both sides and lets nothing across. */
export const each =
  (gain: (at: Hertz) => Complex): EarsAt =>
  (at) => [
    [gain(at), zero],
    [zero, gain(at)],
  ];

/** A capacitor into a resistor, by its corner. */
export const highPass =
  (corner: Hertz) =>
  (at: Hertz): Complex => {
    const x = at / corner;
    return { re: (x * x) / (1 + x * x), im: x / (1 + x * x) };
  };

/** Later by a time. */
export const later =
  (delay: Seconds) =>
  (at: Hertz): Complex => ({
    re: Math.cos(2 * Math.PI * at * delay),
    im: -Math.sin(2 * Math.PI * at * delay),
  });

/** Greatest difference between two channels, the other shifted by so many samples, from a sample up to another. */
export function difference(
  one: Float32Array,
  other: Float32Array,
  { shift = 0, from = 0, to = one.length } = {},
): number {
  let most = one.length === other.length ? 0 : Number.POSITIVE_INFINITY;
  for (let n = from; n < to; n += 1) {
    most = Math.max(most, Math.abs((one[n] ?? Number.NaN) - (other[n - shift] ?? 0)));
  }
  return most;
}

export const rms = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);

export const peak = (samples: Float32Array): number =>
  samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

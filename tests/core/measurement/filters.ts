import type { Complex } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";

/** What lies between, as a gain over frequency. */
export type Filter = (frequency: Hertz) => Complex;

const over = ({ re, im }: Complex): Complex => {
  const size = re * re + im * im;
  return { re: re / size, im: -im / size };
};
const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

/** A Butterworth low-pass of even order. */
export const lowPass =
  (corner: Hertz, order: number): Filter =>
  (frequency) => {
    const w = frequency / corner;
    let gain: Complex = { re: 1, im: 0 };
    for (let at = 0; at < order / 2; at += 1) {
      const damping = 2 * Math.cos((Math.PI * (2 * at + 1)) / (2 * order));
      gain = times(gain, over({ re: 1 - w * w, im: damping * w }));
    }
    return gain;
  };

/** One capacitor in series. */
export const highPass =
  (corner: Hertz): Filter =>
  (frequency) =>
    over({ re: 1, im: -corner / frequency });

export const both =
  (one: Filter, other: Filter): Filter =>
  (frequency) =>
    times(one(frequency), other(frequency));

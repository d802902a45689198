/** A complex number: a level and a phase at one frequency. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const real = (re: number): Complex => ({ re, im: 0 });
export const zero: Complex = real(0);

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
export const scale = (a: Complex, by: number): Complex => ({ re: a.re * by, im: a.im * by });
export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

/** The magnitude. */
export const size = (a: Complex): number => Math.hypot(a.re, a.im);

/** Positive where two signals push the same way, negative where they are in opposite polarity. */
export const agreement = (a: Complex, b: Complex): number => a.re * b.re + a.im * b.im;

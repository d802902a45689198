import type { Complex } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";

/** What passes below a corner: half of the power at it. */
export const lowPass = (corner: Hertz, at: Hertz): Complex => {
  const both = corner ** 2 + at ** 2;
  return { re: corner ** 2 / both, im: (-corner * at) / both };
};

/** What passes above a corner: all of it with the corner at zero. With `lowPass` of the same corner it adds up to one. */
export const highPass = (corner: Hertz, at: Hertz): Complex => {
  if (corner === 0) return { re: 1, im: 0 };
  const both = corner ** 2 + at ** 2;
  return { re: at ** 2 / both, im: (corner * at) / both };
};

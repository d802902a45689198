import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";

/**
 * A short stretch of frozen noise: one sine a step, steps spaced evenly in pitch and all of one size, which is
 * noise of a pink slope with nothing at all outside its band but what the ramps spread.
 */
export interface Noise {
  /** Every sine lies inside low to high. */
  readonly low: Hertz;
  readonly high: Hertz;
  readonly length: Seconds;
  /** Raised-cosine ramps inside `length`. */
  readonly attack: Seconds;
  readonly release: Seconds;
  /**
   * Phase of each sine at the start in sixteenths of a turn, one hexadecimal digit a sine, from low to high. Found by
   * search for a low peak; other phases sound the same and only peak higher.
   */
  readonly phases: string;
  /** No sample is greater than this when the stretch is rendered at `renderedLevel`. */
  readonly peak: DecibelsFullScale;
}

/** Both idents are made of this, so that only their rhythm tells them apart. */
export const knock: Noise = {
  low: 215,
  high: 3800,
  length: 0.12,
  attack: 0.01,
  release: 0.04,
  phases:
    "a3d8d4ac11fa5f6b53cb6d5325efa88b5585d87780140f1e4f565bcd685e5867c7d76978bb23ebe547289f6bc4b1d7e2",
  peak: -19,
};

/** Low enough that opposite polarity is heard as width (above about 1 kHz it is not). */
export const burst: Noise = {
  low: 160,
  high: 960,
  length: 0.45,
  attack: 0.02,
  release: 0.02,
  phases:
    "305e1a536609d6798b4361672a3a2c76761629e8479c19d28302f5e53a300ba532b4be7a32b1059cb105230eba5533dd",
  peak: -19,
};

/** As the knock, but longer: a step of the rotation. */
export const turn: Noise = {
  low: 215,
  high: 3800,
  length: 0.3,
  attack: 0.02,
  release: 0.02,
  phases:
    "9ab8a2f7178cda8a457693a9ad89a99fd172c99482b75010f8478fa85838e50a54385b010955bfaf8f77a964e515949f",
  peak: -18.5,
};

/** So high that opposite polarity is not heard. Its peak holds from 44.1 kHz on; lower rates have no room for all of it. */
export const high: Noise = {
  low: 3200,
  high: 6400,
  length: 0.12,
  attack: 0.01,
  release: 0.04,
  phases:
    "a8885847986e5ee30536938c6edc19d0e12f8699bdcb6f2d5529b99a7bf6162cbb3bed3135247fca5e76150d65508722",
  peak: -18.1,
};

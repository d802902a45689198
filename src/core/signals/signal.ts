import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import type { Noise } from "./noise.ts";

/** What one channel gets of the noise: as it is, nothing, or upside down. */
export type Polarity = 1 | 0 | -1;

/** One knock or burst: from the start of its first ramp to the end of its last. */
export interface Stretch {
  readonly start: Seconds;
  readonly end: Seconds;
  readonly left: Polarity;
  readonly right: Polarity;
}

/** A sound as data. */
export interface Signal {
  readonly duration: Seconds;
  /** Undefined is silence. */
  readonly noise: Noise | undefined;
  /** Level of each channel over each stretch in which it sounds. */
  readonly level: DecibelsFullScale;
  /** No sample of it is greater. */
  readonly peak: DecibelsFullScale;
  /** When each knock or burst sounds and on which channels, in order of time; none overlap. */
  readonly stretches: (seed: number) => readonly Stretch[];
}

import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";

/** What one channel gets: the wave as it is, nothing, or upside down. */
export type Polarity = 1 | 0 | -1;

/** A time in which something sounds: from the start of its first ramp to the end of its last. */
export interface Stretch {
  readonly start: Seconds;
  readonly end: Seconds;
  readonly left: Polarity;
  readonly right: Polarity;
}

/** Samples for two channels, as a renderer fills them; zeros at first. */
export interface Channels {
  readonly left: Float32Array;
  readonly right: Float32Array;
}

/** A sound as data, and how its samples are made. */
export interface Signal {
  readonly duration: Seconds;
  /** Root mean square of each channel over each stretch in which it sounds (over the loudest where they differ), 20 log10 of full scale 1. */
  readonly level: DecibelsFullScale;
  /** No sample of it is greater. */
  readonly peak: DecibelsFullScale;
  /** When it sounds and on which channels, in order of time; none overlap on one channel. */
  readonly stretches: (seed: number) => readonly Stretch[];
  /** From one of these samples up to the other it may be played over and over without a seam. */
  readonly loop?: (rate: Hertz) => { readonly from: number; readonly to: number };
  /** Whoever listens may turn the volume up for it: before the next sound it must go back down. */
  readonly turnedUp?: true;
  /** Fills both channels, `duration` long, at a rate. Nothing it makes lies above 0.45 of the rate. */
  readonly fill: (channels: Channels, rate: Hertz, seed: number) => void;
}

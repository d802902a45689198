import type { Hertz } from "#core/units/units.ts";

/** Samples as they came in, one array a channel, all of one length; full scale is 1. */
export interface Capture {
  readonly channels: readonly Float32Array[];
  readonly rate: Hertz;
}

import type { Hertz } from "#core/units/units.ts";

/** Samples for two channels, full scale 1. A sound from `render` fills both on purpose; zeros are silence meant. */
export interface Sound {
  readonly left: Float32Array;
  readonly right: Float32Array;
  readonly rate: Hertz;
}

import type { Noise } from "#core/checks/noise.ts";

/** Where a noise at a position comes in; left out, which noise it is. */
export interface NoiseView {
  readonly screen: "noise";
  readonly position: string;
  readonly noise?: Noise;
}

import type { Hertz, Seconds } from "#core/units/units.ts";

/** A sine whose pitch rises evenly: from one frequency to another in a time. A. Farina, AES 108 (2000). */
export interface Glide {
  readonly from: Hertz;
  readonly to: Hertz;
  readonly length: Seconds;
}

/** Turns it has made after a time. */
export function turnsAt({ from, to, length }: Glide, time: Seconds): number {
  const slow = length / Math.log(to / from);
  return from * slow * (Math.exp(time / slow) - 1);
}

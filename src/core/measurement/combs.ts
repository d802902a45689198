import { combs, halves } from "#core/signals/multitone.ts";
import { type Tone, usable } from "#core/signals/tones.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Row, row } from "./spectrum.ts";

/** Tones lie so far apart. */
export const apart: Hertz = 125;

/** One comb as it was sent. */
export interface Comb {
  /** Its lowest tone. */
  readonly begin: Hertz;
  /** Peak and phase of a cosine, of each tone. */
  readonly sent: Row;
}

/** A sine of some turns is a cosine a quarter of a turn later. */
function ofTones(tones: readonly Tone[]): Comb {
  const sent = row(tones.length);
  for (const [k, { peak, turns = 0 }] of tones.entries()) {
    sent.re[k] = fromDecibels(peak) * Math.sin(2 * Math.PI * turns);
    sent.im[k] = -fromDecibels(peak) * Math.cos(2 * Math.PI * turns);
  }
  return { begin: tones[0]?.frequency ?? 0, sent };
}

/** The left comb first. */
export const sentCombs: readonly [Comb, Comb] = [ofTones(combs.left), ofTones(combs.right)];

/** Which comb a programme (left 0, right 1) had in a stretch: they are exchanged in the second. */
export const combOf = (programme: number, stretch: number): number => (programme + stretch) % 2;

export const stretches = halves;

/** How many tones of a comb a capture can hold at its rate. */
export const countAt = (rate: Hertz): number =>
  Math.min(
    ...sentCombs.map(({ begin, sent }) =>
      Math.min(sent.re.length, Math.ceil((usable * rate - begin) / apart)),
    ),
  );

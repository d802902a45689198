import { clickLength } from "#core/signals/click.ts";
import { marks, multitone, swell } from "#core/signals/multitone.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Capture } from "./capture.ts";
import { stretches } from "./combs.ts";
import type { Clock } from "./grid.ts";
import type { NotMeasured } from "./return.ts";

/*
 * Two channels that are one and the same are a mono capture, and so is one beside a dead one; but only noise shows it. A wire of numbers
 * alone has none, and there the same samples on both sides are what the wire did.
 */

const margin: Seconds = 0.05;
const forever: Seconds = 1e6;
/** No converter has less noise; what is left of a filter's ringing may. */
const least = 1e-6;

/** When the signal is silent, in its own time. */
const silences: readonly (readonly [Seconds, Seconds])[] = [
  [-forever, marks[0] ?? 0],
  ...marks.map((mark, at): [Seconds, Seconds] => [
    mark + clickLength,
    marks[at + 1] ?? stretches[0].start - swell,
  ]),
  [stretches[0].end + swell, stretches[1].start - swell],
  [multitone.duration, forever],
];

/** Root mean square of what changes in some samples: a steady offset is no noise. */
function noiseOf(pieces: readonly Float32Array[]): number {
  let [sum, count] = [0, 0];
  for (const piece of pieces)
    for (let n = 1; n < piece.length; n += 1) {
      sum += ((piece[n] ?? 0) - (piece[n - 1] ?? 0)) ** 2 / 2;
      count += 1;
    }
  return Math.sqrt(sum / (count || 1));
}

/** The greatest difference of two channels, or the greatest sample of one beside nothing. */
function apart(one: Float32Array, other?: Float32Array): number {
  let most = 0;
  for (let n = 0; n < one.length; n += 1)
    most = Math.max(most, Math.abs((one[n] ?? 0) - (other?.[n] ?? 0)));
  return most;
}

/** Whether a capture of two channels is one of a single channel, for a clock of the signal. */
export function monoIn({ channels, rate }: Capture, clock: Clock): NotMeasured | undefined {
  const [left, right] = channels;
  if (left === undefined || right === undefined) return undefined;
  const at = (time: Seconds) => Math.max(0, Math.round((clock.start + clock.pace * time) * rate));
  const noises = [left, right].map((channel) =>
    noiseOf(silences.map(([from, to]) => channel.subarray(at(from + margin), at(to - margin)))),
  );
  const measured = Math.min(apart(left, right), apart(left), apart(right));
  const bound = Math.max(...noises);
  return measured === 0 && bound > least ? { refused: "mono", measured, bound } : undefined;
}

import { scaled } from "#core/hearing/full-size.ts";
import { gainWithin, measured, rendered } from "#core/hearing/measure.ts";
import { rampedEnds, softened } from "#core/hearing/ramps.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** Below this it is silence (-80 dBFS, as gate one has it). */
const silent = 1e-4;

/**
 * The samples of a prompt: its pieces one after the other, each between ramps, the silence that `gapsOf` tells before each.
 * As loud as any sound may be as rendered: its loudest 300 ms at the rendered level, or lower where a peak would else be over
 * its cap once the level is raised to its own. The sharpest peak of the sound decides, so take the pieces at the rate that plays.
 * @param pieces samples of each word, any size, in order
 * @param rate of all of them
 * @throws RangeError where there is nothing in them to be heard, or no gap for each
 */
export function joined(
  pieces: readonly Float32Array[],
  rate: Hertz,
  gaps: readonly Seconds[],
): Float32Array {
  if (gaps.length !== pieces.length)
    throw new RangeError(`${gaps.length} gaps for ${pieces.length} pieces`);
  const row = inARow(pieces, rate, gaps);
  const own = measured(row, rate);
  // Softened as it will play: the hush before a 't' is silence to gate one at one level and none at another.
  const soft =
    own.peak > silent ? softened(scaled(row, gainWithin(own, rendered)), rate) : undefined;
  if (soft === undefined) throw new RangeError(`nothing to be heard in ${pieces.length} pieces`);
  return soft;
}

function inARow(
  pieces: readonly Float32Array[],
  rate: Hertz,
  gaps: readonly Seconds[],
): Float32Array {
  const silences = gaps.map((gap) => Math.round(gap * rate));
  const length = [...silences, ...pieces.map((piece) => piece.length)].reduce((a, b) => a + b, 0);
  const row = new Float32Array(length);
  let at = 0;
  for (const [n, piece] of pieces.entries()) {
    at += silences[n] ?? 0;
    row.set(rampedEnds(piece, rate), at);
    at += piece.length;
  }
  return row;
}

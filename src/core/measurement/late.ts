import { clickAt, clickLength } from "#core/signals/click.ts";
import { marks, swell } from "#core/signals/multitone.ts";
import { sizeAt, type While } from "#core/signals/tones.ts";
import type { Complex } from "#core/units/complex.ts";
import type { Seconds } from "#core/units/units.ts";
import { sentCombs, stretches } from "./combs.ts";
import { earlier, type Point } from "./delay.ts";
import type { Received } from "./entries.ts";
import { type Gridded, gridRate, period } from "./grid.ts";
import { addComb, type Row } from "./spectrum.ts";

/*
 * A comb alone repeats after 8 ms, so its phases tell a delay but for multiples of that. Which it is, where the stretches begin and end tells,
 * and the two clicks: for each the likelihood that what came in is what would have come.
 */

const round: Seconds = period / gridRate;
/** So many rounds either way are tried. */
const most = 14;
const reach: Seconds = most * round + 0.03;
/** Edges are compared in pieces of a millisecond. */
const piece = 64;
/** Tones below this are left out of edges, where hum is. */
const humless = 2;

/** A time, and how well it fits, against hearing nothing: sums of squares of samples. */
export interface Late {
  readonly late: Seconds;
  readonly fit: number;
}

interface Piece {
  readonly time: Seconds;
  readonly half: While;
  readonly both: number;
  readonly own: number;
}

function withoutHum({ re, im }: Row): Row {
  const [a, b] = [re.slice(), im.slice()];
  a.fill(0, 0, humless);
  b.fill(0, 0, humless);
  return { re: a, im: b };
}

/** What came in about an edge against the steady tones, piece by piece. */
function piecesAt({ channels, first }: Gridded, received: Received, edge: Seconds): Piece[] {
  const samples = channels[received.input] ?? new Float64Array();
  const half = { ...(stretches[received.stretch] ?? stretches[0]), swell };
  const from = Math.max(0, Math.round((edge - reach) * gridRate) - first);
  const to = Math.min(samples.length, Math.round((edge + reach) * gridRate) - first);
  const steady = new Float64Array(Math.max(0, to - from));
  for (const [comb, { begin }] of sentCombs.entries())
    addComb(steady, first + from, begin, withoutHum(received.tones[comb] ?? received.tones[0]));
  return Array.from({ length: Math.floor(steady.length / piece) }, (_, at) => {
    let [both, own] = [0, 0];
    for (let n = at * piece; n < (at + 1) * piece; n += 1) {
      const tone = steady[n] ?? 0;
      both += tone * (samples[from + n] ?? 0);
      own += tone * tone;
    }
    return { time: (first + from + (at + 0.5) * piece) / gridRate, half, both, own };
  });
}

function fitOfPieces(pieces: readonly Piece[], late: Seconds): number {
  let sum = 0;
  for (const { time, half, both, own } of pieces) {
    const size = sizeAt(half, time - late);
    sum += 2 * size * both - size * size * own;
  }
  return sum;
}

/** The gain of both programmes together at the click's frequency, had all come earlier. */
function clickGain(lines: readonly (readonly Point[])[], late: Seconds): Complex {
  let [re, im] = [0, 0];
  for (const points of lines) {
    const near = points.filter(({ frequency }) => Math.abs(frequency - 1500) < 300);
    for (const point of near.map((one) => earlier(one, late))) {
      re += point.re / near.length;
      im += point.im / near.length;
    }
  }
  return { re, im };
}

function fitOfClicks({ channels, first }: Gridded, input: number, gain: Complex, late: Seconds) {
  const samples = channels[input] ?? new Float64Array();
  let sum = 0;
  for (const mark of marks) {
    const from = Math.ceil((mark + late) * gridRate);
    for (let n = from; n < from + clickLength * gridRate; n += 1) {
      const sample = samples[n - first];
      if (sample === undefined) continue;
      const time = n / gridRate - mark - late;
      const own = gain.re * clickAt(time) + gain.im * clickAt(time, 0.25);
      sum += 2 * sample * own - own * own;
    }
  }
  return sum;
}

/** How late an input is against the grid, given its delay but for multiples of 8 ms, and what came in. */
export function lateOf(
  gridded: Gridded,
  all: readonly Received[],
  lines: readonly (readonly Point[])[],
  about: Seconds,
): Late {
  const pieces = all.flatMap((received) => {
    const { start, end } = stretches[received.stretch] ?? stretches[0];
    return [...piecesAt(gridded, received, start), ...piecesAt(gridded, received, end)];
  });
  const input = all[0]?.input ?? 0;
  let best: Late = { late: about, fit: Number.NEGATIVE_INFINITY };
  for (let many = -most; many <= most; many += 1) {
    const late = about + many * round;
    const fit =
      fitOfPieces(pieces, late) + fitOfClicks(gridded, input, clickGain(lines, late), late);
    if (fit > best.fit) best = { late, fit };
  }
  return best;
}

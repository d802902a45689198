import type { Seconds } from "#core/units/units.ts";
import type { Capture } from "./capture.ts";
import { type Remainder, remainderOf, turnedBack, without } from "./clock.ts";
import { stretches } from "./combs.ts";
import { bulkOf, pointsOf } from "./delay.ts";
import { type Line, lineOf, type Received, received, withFloor } from "./entries.ts";
import { type Clock, type Gridded, gridRate } from "./grid.ts";
import { type Late, lateOf } from "./late.ts";
import { onGrid } from "./resample.ts";

/** A capture on the clock of the signal. */
export interface Aligned {
  readonly clock: Clock;
  /** What is left of the drift after that clock is taken away: its error. */
  readonly drift: Remainder;
  readonly gridded: Gridded;
  /** How late each input is against the clock. */
  readonly late: readonly Late[];
  readonly all: readonly ReturnType<typeof withFloor>[];
  /** How well the times of all inputs fit: sums of squares. */
  readonly fit: number;
}

/** What the rough beginning may be wrong by. */
const rough: Seconds = 0.04;
const margin: Seconds = 0.15;
const rounds = 3;
/** Drift of so many of its own standard deviations spreads the tones by less than the noise beside them; what is left is turned back. */
const unseen = 30;

/** Stretches that lie in a capture whole, by a rough clock. */
export function wholeIn({ channels, rate }: Capture, { start, pace }: Clock): readonly number[] {
  const length = (channels[0]?.length ?? 0) / rate;
  return [0, 1].filter((at) => {
    const { start: from, end } = stretches[at] ?? stretches[0];
    return start + pace * from > -rough && start + pace * end < length + rough;
  });
}

/** Brings a capture onto the grid, again and again until no drift is left that shows in the noise. */
function settled(capture: Capture, begin: Clock, which: readonly number[], count: number) {
  const length = (capture.channels[0]?.length ?? 0) / capture.rate;
  let clock = begin;
  for (let round = 1; ; round += 1) {
    const from = Math.max(-margin, -clock.start / clock.pace);
    const to = Math.min(9.6 + margin, (length - clock.start) / clock.pace);
    const gridded = onGrid(capture, clock, Math.ceil(from * gridRate), Math.floor(to * gridRate));
    const all = gridded.channels.flatMap((_, input) =>
      which.map((stretch) => received(gridded, input, stretch, count, { late: 0, spare: rough })),
    );
    const { by, error } = remainderOf(all, () => 1);
    if (round === rounds || Math.abs(by) < Math.max(1e-10, unseen * error))
      return { clock, gridded, all };
    clock = without(clock, by);
  }
}

/** Lines without their noise, from a first look. */
const roughLines = (all: readonly Received[], input: number, count: number): readonly Line[] => {
  const quiet = { power: [new Float64Array(count).fill(1), new Float64Array(count).fill(1)] };
  return [0, 1].map((programme) =>
    lineOf(
      all.map((one) => ({ received: one, floor: { ...quiet, whole: 0 } })),
      input,
      programme,
    ),
  );
};

/** Aligns a capture, given a rough clock and which stretches are whole in it. */
export function aligned(
  capture: Capture,
  begin: Clock,
  which: readonly number[],
  count: number,
): Aligned {
  const { clock, gridded, all } = settled(capture, begin, which, count);
  const late = gridded.channels.map((_, input) => {
    const points = roughLines(all, input, count).map(pointsOf);
    const own = all.filter((one) => one.input === input);
    return lateOf(gridded, own, points, bulkOf(points));
  });
  const best = late.reduce((one, other) => (other.fit > one.fit ? other : one));
  const used = late.map((one) => (one.fit > best.fit / 1e4 ? one : best));
  const kept = gridded.channels.flatMap((_, input) =>
    which.map((stretch) =>
      withFloor(
        received(gridded, input, stretch, count, { late: used[input]?.late ?? 0, spare: 0 }),
        count,
      ),
    ),
  );
  const drift = remainderOf(
    kept.map((one) => one.received),
    (one, comb, k) =>
      kept.find(({ received }) => received === one)?.floor.power[comb]?.[k] || 1e-30,
  );
  return {
    clock: without(clock, drift.by),
    drift,
    gridded,
    late: used,
    all: kept.map((one) => ({ ...one, received: turnedBack(one.received, drift.by) })),
    fit: late.reduce((sum, { fit }) => sum + fit, 0),
  };
}

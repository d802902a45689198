import type { Seconds } from "#core/units/units.ts";
import { lineUpTone } from "./line-up.ts";
import { ofTones, type Part } from "./of-tones.ts";
import type { Signal } from "./signal.ts";

/** When each cycle begins, after a second of line-up tone on both. */
const lead: Seconds = 1;
const swell: Seconds = 0.005;

type Break = readonly [from: Seconds, to: Seconds];

/** Line-up tone that is broken on each channel by a pattern of its own, cycle after cycle. Breaks are to the sample at half the size. */
function broken(
  cycle: Seconds,
  cycles: number,
  left: readonly Break[],
  right: readonly Break[],
): Signal {
  const end = lead + cycle * cycles;
  const parts = (breaks: readonly Break[], side: Pick<Part, "left" | "right">): Part[] => {
    const all = Array.from({ length: cycles }, (_, at) =>
      breaks.map(([from, to]) => [lead + at * cycle + from, lead + at * cycle + to] as const),
    ).flat();
    const starts = [0.1, ...all.map(([, to]) => to)];
    const ends = [...all.map(([from]) => from), end];
    return starts.map((start, at) => ({
      tones: [lineUpTone],
      ...side,
      start,
      end: ends[at] ?? end,
      swell,
    }));
  };
  return ofTones(
    end + 0.1,
    [...parts(left, { left: 1, right: 0 }), ...parts(right, { left: 0, right: 1 })],
    { loop: { from: lead + cycle, to: lead + 2 * cycle } },
  );
}

/** The stereo identification of EBU R49: every 3 s the left is broken for 250 ms. */
export const stereoIdent = broken(3, 4, [[0, 0.25]], []);

/**
 * The two-channel line identification of the United Kingdom's broadcasters: every 4 s the left is broken once for 250 ms, and 250 ms later
 * the right twice, 250 ms each and 250 ms apart. As an encyclopaedia describes it.
 */
export const lineIdent = broken(
  4,
  3,
  [[0, 0.25]],
  [
    [0.5, 0.75],
    [1, 1.25],
  ],
);

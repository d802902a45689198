import { halves, multitone } from "#core/signals/multitone.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import { combShare, type Piecewise, piecewise } from "./comb-share.ts";

/** A part of a long recording, in samples. */
export interface Region {
  readonly from: number;
  readonly to: number;
}

/** Looks for the signal in a recording that comes in slices. */
export interface Scan {
  /** The next samples of all channels, of any number. */
  push(block: readonly Float32Array[]): void;
  /** Where the signal seems to be so far, with a margin, in order; also where it has not ended yet. */
  found(): readonly Region[];
}

const margin: Seconds = 0.3;
/** Between the stretches there is half a second; what is further apart belongs to two signals. */
const longestGap: Seconds = 0.95;
/** Less of the tones than this is no stretch. */
const shortest: Seconds = 2.5;

/** Tones that were heard from one piece up to another, with how long they lasted in all. */
interface Run {
  readonly from: Seconds;
  readonly to: Seconds;
  readonly sounding: Seconds;
  /** When they were away for a time, if they were: the end of what came before. */
  readonly parted: Seconds | undefined;
}

/**
 * Looks for the signal in a recording of some rate and channels, slice by slice. It keeps less than a second of samples, and a few numbers for each
 * place it found.
 */
export function createScan(rate: Hertz, channels: number): Scan {
  const pieces = piecewise(rate, channels);
  const ended: Run[] = [];
  let open: Run | undefined;
  const heard = (present: boolean, from: Seconds, to: Seconds): void => {
    if (open !== undefined && from - open.to > longestGap) {
      if (open.sounding >= shortest) ended.push(open);
      open = undefined;
    }
    if (present) open = longer(open, from, to);
  };
  return {
    push: (block) => pieces.push(block, (piece, at) => heardIn(pieces, piece, at, heard)),
    found: () =>
      [...ended, ...(open !== undefined && open.sounding >= shortest ? [open] : [])].map((run) =>
        regionOf(run, rate, pieces.pushed()),
      ),
  };
}

function heardIn(
  pieces: Piecewise,
  piece: readonly Float64Array[],
  at: number,
  heard: (present: boolean, from: Seconds, to: Seconds) => void,
): void {
  const present = piece.some((samples) => combShare(pieces, samples));
  heard(present, at * pieces.time, (at + 1) * pieces.time);
}

/** A run that goes on; one that lasted longer than the signal can is begun anew. */
function longer(run: Run | undefined, from: Seconds, to: Seconds): Run {
  if (run === undefined || to - run.from > multitone.duration + 0.5)
    return { from, to, sounding: to - from, parted: undefined };
  const parted = from > run.to + 1e-9 && run.sounding > shortest ? run.to : run.parted;
  return { from: run.from, to, sounding: run.sounding + to - from, parted };
}

/** Where to cut: a run that was parted is both stretches, else it may be the first or the second. */
function regionOf({ from, to, parted }: Run, rate: Hertz, pushed: number): Region {
  const [first, second] = halves;
  const after = multitone.duration - second.end;
  const begin = from - first.start - margin;
  const end = to + (parted === undefined ? second.start - first.end : 0) + after + margin;
  return {
    from: Math.max(0, Math.floor(begin * rate)),
    to: Math.min(pushed, Math.ceil(end * rate)),
  };
}

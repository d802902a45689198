import type { Recording } from "./capture.ts";
import { frameAt, leadOf, type Programme } from "./programme.ts";

/** A 16-bit step, full scale 1. */
const step = 2 ** -15;

/** A place where a recording does not go on as the programme does. */
interface Slip {
  /** Frames since the programme began. */
  readonly at: number;
  /** Frames until it is exact again. */
  readonly wrong: number;
  /** By how much it is late from then on: above nought something was put in, below it something is missing; frames. */
  readonly by: number;
}

/** How a recording compares with what was to come, frame by frame from the one alignment at its beginning. */
export interface Comparison {
  /** The frame of the recording at which the programme began. */
  readonly start: number;
  /** Frames compared. */
  readonly frames: number;
  /** Greatest difference of a sample outside the slips, in 16-bit steps. */
  readonly worst: number;
  /** Every place where a sample is off by more than half a step. */
  readonly slips: readonly Slip[];
  /** Frames from the first that falls behind the programme to the last that is not silence; nought when it was not silenced. */
  readonly fade: number;
  /** Samples that are not silence before the programme, and those louder than it while it fades. */
  readonly stray: number;
}

/** No fade is longer, seconds: what lies before it must be exact. */
const longestFade = 0.02;
/** Frames by which an alignment is known: fewer than any browser renders at once. And how far it may have moved. */
const [measure, reach] = [256, 9600];

/** Compares all of a recording with a programme that was played in it once, or over and over until it was silenced. Throws when nothing was heard. */
export function compare(recording: Recording, programme: Programme): Comparison {
  const start = beginning(recording, programme);
  const last = lastHeard(recording);
  const looped = programme.again !== undefined;
  const end = looped ? last + 1 - Math.round(longestFade * recording.rate) : recording.left.length;
  const { worst, slips, shift } = follow(recording, programme, start, end);
  const stray = start < 0 ? 0 : count(0, start, (n) => heard(recording, n));
  const ending = looped ? fading(recording, programme, shift, end) : { fade: 0, stray: 0 };
  return {
    start,
    frames: end - start,
    worst,
    slips,
    fade: ending.fade,
    stray: stray + ending.stray,
  };
}

/** The frame at which the programme began, told where it is loud: its ramps are all but the same a frame later. */
function beginning(recording: Recording, programme: Programme): number {
  const size = (n: number) => Math.abs(recording.left[n] ?? 0) + Math.abs(recording.right[n] ?? 0);
  const first = recording.left.findIndex((_, n) => size(n) > 0);
  if (first < 0) throw new Error("nothing was heard at the device");
  const to = first + recording.rate;
  let peak = 0;
  for (let n = first; n < to; n += 1) peak = Math.max(peak, size(n));
  const from = recording.left.findIndex((_, n) => size(n) > peak / 4);
  const found = nextAlignment(recording, programme, first - leadOf(programme), { from, to });
  if (found.at >= to) throw new Error("what was heard is not the beginning of the programme");
  return found.shift;
}

/** From the alignment on, and after a slip from the next one that is found. */
function follow(recording: Recording, programme: Programme, start: number, end: number) {
  const slips: Slip[] = [];
  let [worst, shift] = [0, start];
  for (let n = Math.max(0, start); n < end; n += 1) {
    const off = difference(recording, programme, shift, n);
    if (off <= step / 2) {
      worst = Math.max(worst, off / step);
      continue;
    }
    const next = nextAlignment(recording, programme, shift, { from: n, to: end });
    slips.push({ at: n - shift, wrong: next.at - n, by: next.shift - shift });
    shift = next.shift;
    n = next.at - 1;
  }
  return { worst, slips, shift };
}

/** The last frames: none is louder than the programme, and so is none after the first that is not as it is. */
function fading(recording: Recording, programme: Programme, shift: number, end: number) {
  const after = lastHeard(recording) + 1;
  let begun = after;
  for (let n = after - 1; n >= end; n -= 1)
    if (difference(recording, programme, shift, n) > step / 2) begun = n;
  return {
    fade: after - begun,
    stray: count(end, after, (n) => louder(recording, programme, shift, n)),
  };
}

/** Where the recording is exact again, and on which alignment; its end when it never is. */
function nextAlignment(
  recording: Recording,
  programme: Programme,
  shift: number,
  { from, to }: { readonly from: number; readonly to: number },
): { readonly at: number; readonly shift: number } {
  for (let at = from; at + measure < to; at += measure / 8) {
    const found = alignment(recording, programme, shift, at);
    if (found === undefined) continue;
    let begun = at;
    while (begun > from + 1 && difference(recording, programme, found, begun - 1) <= step / 2)
      begun -= 1;
    return { at: begun, shift: found };
  }
  return { at: to, shift };
}

/** The shift nearest to another by which the frames from one on are exact; undefined when there is none, or they are all but silent. */
function alignment(
  recording: Recording,
  programme: Programme,
  about: number,
  from: number,
): number | undefined {
  const to = from + measure;
  if (count(from, to, (n) => heard(recording, n)) < measure / 2) return undefined;
  const exact = (shift: number) => {
    for (let n = from; n < to; n += 1)
      if (difference(recording, programme, shift, n) > step / 2) return false;
    return true;
  };
  for (let off = 0; off <= reach; off += 1) {
    if (exact(about - off)) return about - off;
    if (exact(about + off)) return about + off;
  }
  return undefined;
}

const heard = ({ left, right }: Recording, n: number): boolean => left[n] !== 0 || right[n] !== 0;

function count(from: number, to: number, is: (n: number) => boolean): number {
  let sum = 0;
  for (let n = from; n < to; n += 1) if (is(n)) sum += 1;
  return sum;
}

function lastHeard(recording: Recording): number {
  let n = recording.left.length - 1;
  while (n > 0 && !heard(recording, n)) n -= 1;
  return n;
}

/** The greater difference of both sides from the programme at a shift. */
function difference(recording: Recording, programme: Programme, shift: number, n: number): number {
  const at = frameAt(programme, n - shift) ?? -1;
  const left = (recording.left[n] ?? 0) - (programme.left[at] ?? 0);
  const right = (recording.right[n] ?? 0) - (programme.right[at] ?? 0);
  return Math.max(Math.abs(left), Math.abs(right));
}

function louder(recording: Recording, programme: Programme, shift: number, n: number): boolean {
  const at = frameAt(programme, n - shift) ?? -1;
  const over = (heard = 0, wanted = 0) => Math.abs(heard) > Math.abs(wanted) + step / 2;
  return (
    over(recording.left[n], programme.left[at]) || over(recording.right[n], programme.right[at])
  );
}

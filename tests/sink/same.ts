import type { Capture } from "#core/measurement/capture.ts";
import type { Recording } from "./capture.ts";

/** How a capture compares with a recording of the same that was made beside it, frame by frame from one alignment. */
export interface Likeness {
  /** Frames compared; all of the capture but a little of its beginning and end that the other may lack. */
  readonly frames: number;
  /** Frames off by more than a 16-bit step, on either side. */
  readonly wrong: number;
  /** The greatest difference of a frame, in 16-bit steps. */
  readonly worst: number;
}

const step = 2 ** -15;
/** Frames that find the place, from the first that is so loud: a multitone begins anew every second, but with clicks only once. */
const [key, loud] = [4096, 20 * step];

/** Throws when the one is nowhere in the other. */
export function likeness({ channels }: Capture, recording: Recording): Likeness {
  const [left, right = left] = channels;
  if (left === undefined || right === undefined) throw new Error("nothing was captured");
  const at = placeOf(left, recording.left);
  const from = Math.max(0, -at);
  const to = Math.min(left.length, recording.left.length - at);
  let [wrong, worst] = [0, 0];
  for (let n = from; n < to; n += 1) {
    const off = Math.max(
      Math.abs((left[n] ?? 0) - (recording.left[n + at] ?? 0)),
      Math.abs((right[n] ?? 0) - (recording.right[n + at] ?? 0)),
    );
    worst = Math.max(worst, off / step);
    if (off > step) wrong += 1;
  }
  return { frames: to - from, wrong, worst };
}

/** By how many frames the recording is ahead of the capture. */
function placeOf(captured: Float32Array, recorded: Float32Array): number {
  const first = captured.findIndex((sample) => Math.abs(sample) > loud);
  for (let at = 0; at + key < recorded.length; at += 1) {
    let n = 0;
    while (n < key && Math.abs((captured[first + n] ?? 0) - (recorded[at + n] ?? 0)) <= step)
      n += 1;
    if (n === key) return at - first;
  }
  throw new Error("what was captured is not in the recording");
}

import type { Sound } from "#core/signals/sound.ts";
import { type EarsAt, type Response, responseOf } from "./response.ts";
import { part, type Work } from "./work.ts";

/** Share of the work that asking the chain takes, roughly. */
const asking = 0.4;

/**
 * A programme as it arrives at the ears behind a chain: each ear is the sum over the sides of what the chain lets through,
 * at every frequency. As long as the programme and in step with it to the sample, so that a healthy and a faulty chain's can
 * be exchanged for each other at any moment; what would come before the beginning or after the end is cut off.
 * @throws RangeError where the chain gives no two by two matrix of finite gains
 */
export function* atEars(programme: Sound, at: EarsAt): Work<Sound> {
  const response = yield* part(responseOf(at, programme.rate), 0, asking);
  return yield* part(through(programme, response), asking, 1);
}

/** Overlap and add: a block at a time, the ends of the answers laid over each other. */
function* through({ left, right, rate }: Sound, response: Response): Work<Sound> {
  const { fft, taps, late } = response;
  const ears = { left: new Float32Array(left.length), right: new Float32Array(left.length), rate };
  const [block, spectrum] = [new Float64Array(2 * fft.size), new Float64Array(2 * fft.size)];
  for (let first = 0; first < Math.max(1, left.length); first += taps) {
    block.fill(0);
    for (let n = 0; n < taps; n += 1) {
      block[2 * n] = left[first + n] ?? 0;
      block[2 * n + 1] = right[first + n] ?? 0;
    }
    fft.transform(spectrum, block);
    fft.inverseTransform(block, applied(spectrum, response));
    lay(block, first - late, ears);
    yield Math.min(1, (first + taps) / left.length);
  }
  return ears;
}

/** straight·z + turned·conj(z), bin by bin. */
function applied(spectrum: Float64Array, { straight, turned }: Response): Float64Array {
  const result = new Float64Array(spectrum.length);
  addProduct(result, straight, spectrum, 1);
  addProduct(result, turned, spectrum, -1);
  return result;
}

/** Adds gains times a spectrum, or (`sign` -1) times that of the conjugate: each bin's is the one as far below zero. */
function addProduct(
  result: Float64Array,
  gains: Float64Array,
  spectrum: Float64Array,
  sign: 1 | -1,
): void {
  const points = spectrum.length;
  for (let at = 0; at < points; at += 2) {
    const from = sign === 1 ? at : (points - at) % points;
    const [re, im] = [spectrum[from] ?? 0, sign * (spectrum[from + 1] ?? 0)];
    const [a, b] = [gains[at] ?? 0, gains[at + 1] ?? 0];
    result[at] = (result[at] ?? 0) + a * re - b * im;
    result[at + 1] = (result[at + 1] ?? 0) + a * im + b * re;
  }
}

/** Adds a block to the ears from a sample on, as far as they go. */
function lay(block: Float64Array, from: number, { left, right }: Sound): void {
  const last = Math.min(left.length, from + block.length / 2);
  for (let n = Math.max(0, from); n < last; n += 1) {
    const at = 2 * (n - from);
    left[n] = (left[n] ?? 0) + (block[at] ?? 0);
    right[n] = (right[n] ?? 0) + (block[at + 1] ?? 0);
  }
}

import type { Capture } from "./capture.ts";
import { type Clock, type Gridded, gridRate } from "./grid.ts";
import { type Kernel, kernelFor } from "./kernel.ts";

/**
 * A capture of one or two channels on the grid, from one sample of it up to another; what lies outside the capture is nothing. Right to −125 dB up to the
 * highest tone; what is above 15 kHz is not.
 */
export function onGrid({ channels, rate }: Capture, clock: Clock, first: number, to: number) {
  const kernel = kernelFor(rate);
  const reach = kernel.taps / 2;
  const step = (clock.pace * rate) / gridRate;
  const begin = clock.start * rate + first * step;
  const [length = 0, out] = [channels[0]?.length, channels.map(() => new Float64Array(to - first))];
  const from = Math.max(0, Math.ceil((reach - 1 - begin) / step));
  const last = Math.min(to - first, Math.floor((length - reach - 1 - begin) / step));
  const [a = new Float32Array(), b = a] = channels;
  const [left = new Float64Array(), right = left] = out;
  fill({ kernel, begin, step, from, last }, [a, b], [left, right]);
  return { channels: out, first } satisfies Gridded;
}

interface Course {
  readonly kernel: Kernel;
  readonly begin: number;
  readonly step: number;
  readonly from: number;
  readonly last: number;
}

type Two<T> = readonly [T, T];

/** Both channels at once: the weights are the same. */
function fill(
  { kernel: { taps, phases, weights, steps }, begin, step, from, last }: Course,
  [a, b]: Two<Float32Array>,
  [left, right]: Two<Float64Array>,
): void {
  for (let n = from; n < last; n += 1) {
    const position = begin + n * step;
    const whole = Math.floor(position);
    const phase = (position - whole) * phases;
    const row = Math.floor(phase);
    const part = phase - row;
    const [base, at] = [whole - taps / 2 + 1, row * taps];
    let sumA = 0;
    let sumB = 0;
    for (let tap = 0; tap < taps; tap += 1) {
      const weight = (weights[at + tap] ?? 0) + part * (steps[at + tap] ?? 0);
      sumA += weight * (a[base + tap] ?? 0);
      sumB += weight * (b[base + tap] ?? 0);
    }
    left[n] = sumA;
    right[n] = sumB;
  }
}

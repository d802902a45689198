import type { Hertz } from "#core/units/units.ts";

/** Energy of a stretch of samples in one cell of its discrete Fourier transform, in squared full scale (Goertzel). */
function cell(samples: Float32Array, index: number): number {
  const step = (2 * Math.PI * index) / samples.length;
  let before = 0;
  let now = 0;
  for (const sample of samples) {
    const next = sample + 2 * Math.cos(step) * now - before;
    before = now;
    now = next;
  }
  return now * now + before * before - 2 * Math.cos(step) * now * before;
}

/** Energy between two frequencies, relative only. */
export function energyBetween(samples: Float32Array, rate: Hertz, low: Hertz, high: Hertz): number {
  let energy = 0;
  const width = rate / samples.length;
  for (let index = Math.ceil(low / width); index * width < high; index += 1) {
    energy += cell(samples, index);
  }
  return energy;
}

import { sentCombs } from "./combs.ts";
import type { Received } from "./entries.ts";
import type { Floor } from "./floor.ts";
import { gridRate } from "./grid.ts";
import { powerAt } from "./look.ts";
import type { Distortion, Estimate } from "./return.ts";
import { addComb, bins } from "./spectrum.ts";

/** Where products of two tones fall, of three: the lowest such frequency, others 125 Hz apart. Products that fall on tones are not among them. */
const second = [0, 12, 62, 63, 74, 75];
const third = [38, 49, 50, 99, 111, 112];

/** A frequency of the mains has hum. */
const clean = (frequency: number): boolean =>
  frequency > 0 && frequency % 50 !== 0 && frequency % 60 !== 0;

/** The power in the bins of some products, and how many bins. */
function powerIn(samples: Float64Array, products: readonly number[], count: number) {
  let [power, many] = [0, 0];
  for (const begin of products) {
    const row = bins(samples, 0, begin, count);
    for (let k = 0; k < count; k += 1) {
      if (!clean(begin + 125 * k)) continue;
      power += powerAt(row, k);
      many += 1;
    }
  }
  return { power, many };
}

/** A wave bent so, less the part of it that is the wave itself: its root mean square against that of the wave. */
function bentSize(bent: Float64Array, wave: Float64Array): number {
  let [own, both, square, sum] = [0, 0, 0, 0];
  for (let n = 0; n < wave.length; n += 1) {
    const [x, y] = [wave[n] ?? 0, bent[n] ?? 0];
    own += x * x;
    both += x * y;
    square += y * y;
    sum += y;
  }
  return Math.sqrt((square - (both * both) / own - (sum * sum) / wave.length) / (own || 1));
}

/**
 * What of an order there is in a second, against the wave: the power in the bins where its products fall, less the noise, and as much more as a
 * curve without memory would put elsewhere.
 */
function orderOf(
  data: Float64Array,
  wave: Float64Array,
  { products, power }: { readonly products: readonly number[]; readonly power: 2 | 3 },
  { floor, count }: { readonly floor: number; readonly count: number },
): Estimate {
  const bent = wave.map((x) => (power === 2 ? x * x : x * x * x));
  const [heard, model] = [powerIn(data, products, count), powerIn(bent, products, count)];
  const noise = heard.many * floor;
  const size = bentSize(bent, wave);
  const scale = size / Math.sqrt(model.power || 1);
  return {
    value: scale * Math.sqrt(Math.max(0, heard.power - noise)),
    error: scale * Math.sqrt(noise * Math.sqrt(1 / Math.max(1, heard.many))),
  };
}

/** The distortion of one input, from one stretch. */
export function distortionOf({ folded, tones }: Received, floor: Floor): Distortion {
  const count = tones[0].re.length;
  const wave = new Float64Array(gridRate);
  for (const [comb, { begin }] of sentCombs.entries())
    addComb(wave, 0, begin, tones[comb] ?? tones[0]);
  const by = { floor: floor.whole, count };
  return {
    second: orderOf(folded.mean, wave, { products: second, power: 2 }, by),
    third: orderOf(folded.mean, wave, { products: third, power: 3 }, by),
  };
}

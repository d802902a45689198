import type { Seconds } from "#core/units/units.ts";
import { apart, sentCombs } from "./combs.ts";
import type { Received } from "./entries.ts";
import type { Clock } from "./grid.ts";
import { powerAt } from "./look.ts";
import type { Row } from "./spectrum.ts";

/** The middle of the record: there the phases of a measurement hold, however the clocks drift. */
export const pivot: Seconds = 5.25;

/** How much too fast the tones still are on a grid, as a part of one, and the standard deviation of that. */
export interface Remainder {
  readonly by: number;
  readonly error: number;
}

/** The noise of a stretch: the mean power of a bin at each tone of each comb. */
type Noise = (received: Received, comb: number, k: number) => number;

/** The least squares of what is left of the drift: a tone that is too fast by a part grows along its own phase. */
export function remainderOf(all: readonly Received[], noise: Noise): Remainder {
  let [sum, weight, rest] = [0, 0, 0];
  let many = 0;
  const each = (use: (turned: Turned, by: number, power: number) => void) => {
    for (const received of all)
      for (const comb of [0, 1])
        for (let k = 0; k < received.tones[0].re.length; k += 1) {
          const power = noise(received, comb, k) * received.folded.noisier;
          use(turnedAt(received, comb, k), 1 / power, power);
        }
  };
  each(({ along, size }, by) => {
    sum += by * along;
    weight += by * size;
    many += 1;
  });
  const by = weight > 0 ? sum / weight : 0;
  each(({ along, size, growth }, w) => {
    rest += w * (growth - 2 * by * along + by * by * size);
  });
  const spread = many > 1 ? rest / (many - 0.5) : 0;
  return { by, error: weight > 0 ? Math.sqrt(spread / (2 * weight)) : 0 };
}

interface Turned {
  readonly along: number;
  readonly size: number;
  readonly growth: number;
}

/** How a tone's growth lies along what a faster clock would make of it. */
function turnedAt({ tones, growth }: Received, comb: number, k: number): Turned {
  const [tone, grows] = [tones[comb] ?? tones[0], growth[comb] ?? growth[0]];
  const pace = 2 * Math.PI * ((sentCombs[comb]?.begin ?? 0) + apart * k);
  const along =
    pace * ((tone.re[k] ?? 0) * (grows.im[k] ?? 0) - (tone.im[k] ?? 0) * (grows.re[k] ?? 0));
  return { along, size: pace * pace * powerAt(tone, k), growth: powerAt(grows, k) };
}

/** The same clock without the remainder; the pivot stays where it is in the capture. */
export function without({ start, pace }: Clock, by: number): Clock {
  const slower = pace / (1 + by);
  return { start: start + pivot * (pace - slower), pace: slower };
}

/** What was received as it would be on a clock without the remainder. */
export function turnedBack(received: Received, by: number): Received {
  const away = received.folded.middle - pivot;
  const turned = (tones: Row, comb: number): Row => {
    const out = { re: tones.re.slice(), im: tones.im.slice() };
    for (let k = 0; k < out.re.length; k += 1) {
      const angle = -2 * Math.PI * ((sentCombs[comb]?.begin ?? 0) + apart * k) * by * away;
      const [c, s, re, im] = [Math.cos(angle), Math.sin(angle), tones.re[k] ?? 0, tones.im[k] ?? 0];
      out.re[k] = re * c - im * s;
      out.im[k] = re * s + im * c;
    }
    return out;
  };
  return { ...received, tones: [turned(received.tones[0], 0), turned(received.tones[1], 1)] };
}

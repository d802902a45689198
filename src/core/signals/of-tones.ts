import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import type { Polarity, Signal, Stretch } from "./signal.ts";
import { addTones, levelOf, type Tone, type While } from "./tones.ts";

/** Some tones for a time, on one channel or both. */
export interface Part extends While {
  readonly tones: readonly Tone[];
  readonly left: Polarity;
  readonly right: Polarity;
}

interface More {
  /** Given where the tones never reach their greatest together. */
  readonly peak?: DecibelsFullScale;
  /** Whole seconds, so that they are whole samples at every rate. */
  readonly loop?: { readonly from: Seconds; readonly to: Seconds };
}

/** A signal of tones. They run on in phase while they are not heard. */
export function ofTones(duration: Seconds, parts: readonly Part[], more: More = {}): Signal {
  const { loop, peak } = more;
  return {
    duration,
    level: Math.max(...parts.map(({ tones }) => levelOf(tones))),
    peak: peak ?? Math.max(...parts.map(({ tones }) => together(tones))),
    stretches: () => parts.map(stretchOf),
    ...(loop ? { loop: (rate) => ({ from: loop.from * rate, to: loop.to * rate }) } : {}),
    fill: ({ left, right }, rate) => {
      for (const part of parts) {
        put(left, rate, part, part.left);
        put(right, rate, part, part.right);
      }
    },
  };
}

const stretchOf = ({ start, end, swell, left, right }: Part): Stretch => ({
  start: start - swell / 2,
  end: end + swell / 2,
  left,
  right,
});

function put(channel: Float32Array, rate: Hertz, part: Part, side: Polarity): void {
  if (side === 0) return;
  const tones = part.tones.map((tone) =>
    side === 1 ? tone : { ...tone, turns: (tone.turns ?? 0) + 0.5 },
  );
  addTones(channel, rate, tones, part);
}

/** All tones at their greatest at once. */
const together = (tones: readonly Tone[]): DecibelsFullScale =>
  20 * Math.log10(tones.reduce((sum, { peak }) => sum + 10 ** (peak / 20), 0));

import { seeded } from "#core/units/random.ts";
import { burst, high, type Noise } from "./noise.ts";
import { ofNoise } from "./of-noise.ts";
import type { Signal } from "./signal.ts";

export type PairOrder = "in phase first" | "opposite first";

/** Which of the two bursts of the pair comes first under this seed: each half of the time. */
export const pairOrder = (seed: number): PairOrder =>
  seeded(seed)() < 0.5 ? "in phase first" : "opposite first";

const gap = 0.3;
const inPhase = { left: 1, right: 1 } as const;
const opposite = { left: 1, right: -1 } as const;

function pairOf(noise: Noise): Signal {
  const first = { start: 0.1, end: 0.1 + noise.length };
  const second = { start: first.end + gap, end: first.end + gap + noise.length };
  return ofNoise(noise, second.end + 0.1, (seed) => {
    const ahead = pairOrder(seed) === "in phase first";
    return [
      { ...first, ...(ahead ? inPhase : opposite) },
      { ...second, ...(ahead ? opposite : inPhase) },
    ];
  });
}

/** One noise twice on both channels at one size: once in phase, once with the right channel upside down. */
export const burstPair = pairOf(burst);

/** The same so high that polarity is not heard (above about 1 kHz it is not): what differs is level alone. */
export const highPair = pairOf(high);

import { seeded } from "#core/units/random.ts";
import { renderedLevel } from "./caps.ts";
import { burst } from "./noise.ts";
import type { Signal, Stretch } from "./signal.ts";

export type PairOrder = "in phase first" | "opposite first";

/** Which of the two bursts of the pair comes first under this seed: each half of the time. */
export const pairOrder = (seed: number): PairOrder =>
  seeded(seed)() < 0.5 ? "in phase first" : "opposite first";

const gap = 0.3;
const first = { start: 0.1, end: 0.1 + burst.length };
const second = { start: first.end + gap, end: first.end + gap + burst.length };

const inPhase = { left: 1, right: 1 } as const;
const opposite = { left: 1, right: -1 } as const;

function stretches(seed: number): readonly Stretch[] {
  const ahead = pairOrder(seed) === "in phase first";
  return [
    { ...first, ...(ahead ? inPhase : opposite) },
    { ...second, ...(ahead ? opposite : inPhase) },
  ];
}

/** One noise twice on both channels at one size: once in phase, once with the right channel upside down. */
export const burstPair: Signal = {
  duration: second.end + 0.1,
  noise: burst,
  level: renderedLevel,
  peak: burst.peak,
  stretches,
};

import type { Sound } from "#core/signals/sound.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** Where a prompt is said: in one ear, in the middle of the head, or so that it is heard through a faulty feed. */
export type Route = "left" | "right" | "middle" | "either ear";

/**
 * How many milliseconds later the right side of 'either ear' speaks: longer than a period of the voice, so that sum and
 * difference of the sides are combs which every vowel has harmonics in, and short enough to be one voice (common practice,
 * no source).
 */
const lag = 12;
const millisecond: Seconds = 0.001;

/**
 * A prompt on two channels. 'Either ear' is the same speech on both, the right one 12 ms late: whichever side is dead or
 * exchanged, summed to mono, upside down, or taken from the other because the return is lost, each ear that gets anything
 * gets the words. An instruction must come through the very faults that are looked for.
 */
export function routed(samples: Float32Array, rate: Hertz, to: Route): Sound {
  if (to === "either ear") return lagging(samples, rate);
  const silence = () => new Float32Array(samples.length);
  return {
    left: to === "right" ? silence() : samples.slice(),
    right: to === "left" ? silence() : samples.slice(),
    rate,
  };
}

function lagging(samples: Float32Array, rate: Hertz): Sound {
  // Gate one looks at whole milliseconds of so many samples: what passes on the left passes on the right.
  const late = lag * Math.max(1, Math.round(millisecond * rate));
  const at = (start: number) => {
    const channel = new Float32Array(samples.length + late);
    channel.set(samples, start);
    return channel;
  };
  return { left: at(0), right: at(late), rate };
}

import { seeded } from "#core/units/random.ts";
import { type Making, making } from "./made.ts";

/** A lead with crosstalk in antiphase, one side 6 dB down and both with a corner, at an unknown time and drift. */
export function unknown(seed: number): Making {
  const random = seeded(seed);
  const entries = [
    [1, -0.02],
    [-0.01, 0.5],
  ];
  return {
    ...making,
    delay: 0.05 + 0.6 * random(),
    drift: 400 * (random() - 0.5),
    gain: (input, programme, frequency) => {
      const [own, over] = [entries[input]?.[programme] ?? 0, frequency / 9000];
      return { re: own / (1 + over * over), im: (-own * over) / (1 + over * over) };
    },
  };
}

import { high } from "./noise.ts";
import { ofNoise } from "./of-noise.ts";

/** One burst of high noise on the left, and after a pause once more. */
export const highLeft = ofNoise(high, 1.5, () =>
  [0.1, 0.85].map((start) => ({ start, end: start + high.length, left: 1, right: 0 })),
);

/** Two quick ones on the right, and once more. A driver for high notes that is dead, and a treble that is lost, show here. */
export const highRight = ofNoise(high, 1.5, () =>
  [0.1, 0.3, 0.85, 1.05].map((start) => ({ start, end: start + high.length, left: 0, right: 1 })),
);

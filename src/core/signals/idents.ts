import type { Seconds } from "#core/units/units.ts";
import { knock } from "./noise.ts";
import { ofNoise } from "./of-noise.ts";
import type { Polarity, Signal } from "./signal.ts";

type Sides = { readonly left: Polarity; readonly right: Polarity };

const ident = (starts: readonly Seconds[], sides: Sides): Signal =>
  ofNoise(knock, 1.5, () =>
    starts.map((start) => ({ start, end: start + knock.length, ...sides })),
  );

/** Left only: one knock, and after a pause once more. */
export const leftIdent = ident([0.1, 0.85], { left: 1, right: 0 });

/** Right only: two quick knocks, and after a pause once more. */
export const rightIdent = ident([0.1, 0.3, 0.85, 1.05], { left: 0, right: 1 });

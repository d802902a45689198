import type { Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { knock } from "./noise.ts";
import type { Polarity, Signal } from "./signal.ts";

type Sides = { readonly left: Polarity; readonly right: Polarity };

const ident = (starts: readonly Seconds[], sides: Sides): Signal => ({
  duration: 1.5,
  noise: knock,
  level: renderedLevel,
  peak: knock.peak,
  stretches: () => starts.map((start) => ({ start, end: start + knock.length, ...sides })),
});

/** Left only: one knock, and after a pause once more. */
export const leftIdent = ident([0.1, 0.85], { left: 1, right: 0 });

/** Right only: two quick knocks, and after a pause once more. */
export const rightIdent = ident([0.1, 0.3, 0.85, 1.05], { left: 0, right: 1 });

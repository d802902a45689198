import type { Probability } from "#core/units/units.ts";

/**
 * The chance that a judgement with a spread of one falls below `x`: the normal distribution's, by the logistic approximation
 * with the slope 1.702 (largest error 0.0095; value from memory). People's thresholds are known far less well than that.
 */
export const below = (x: number): Probability => 1 / (1 + Math.exp(-1.702 * x));

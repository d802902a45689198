import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Decibels } from "#core/units/units.ts";

/** What a chain does to the two sides, as a picture can show it. */
export const effects = [
  "straight",
  "nothing",
  "left gone",
  "right gone",
  "swapped",
  "mono",
  "difference",
  "mono, one ear inverted",
  "one side inverted",
  "left in both",
  "right in both",
  "left in both, one inverted",
  "right in both, one inverted",
  "left in the right ear",
  "right in the left ear",
  "all in the left ear",
  "all in the right ear",
  "left weak",
  "right weak",
  "mixed",
] as const;
export type Effect = (typeof effects)[number];

/** Left ear from left, left ear from right, right ear from left, right ear from right. */
export type Gains = readonly [ll: number, lr: number, rl: number, rr: number];

/** Weaker than this beside the strongest and a picture leaves it out. */
const drawn: Decibels = -18;

/**
 * Real gains of the four ways, with the sign they mostly have, relative to `healthy` (the largest gain of the healthy chain): left
 * ear from left, left ear from right, right ear from left, right ear from right.
 */
export function signed(ears: Matrix, healthy: number): Gains {
  const at = (ear: number, side: number) => {
    const gain = ears[ear]?.[side];
    return gain === undefined ? 0 : (Math.sign(gain.re) * size(gain)) / healthy;
  };
  return [at(0, 0), at(0, 1), at(1, 0), at(1, 1)];
}

/** Names what four signed gains do. */
export function effectOf(gains: Gains): Effect {
  const strongest = Math.max(...gains.map(Math.abs));
  if (toDecibels(strongest) < silent) return "nothing";
  const pattern = gains
    .map((gain) => (toDecibels(Math.abs(gain) / strongest) > drawn ? "1" : "0"))
    .join("");
  if (pattern === "1001") return apart(gains);
  const [ll, lr, rl, rr] = gains;
  if (pattern === "1010" && ll * rl < 0) return "left in both, one inverted";
  if (pattern === "0101" && lr * rr < 0) return "right in both, one inverted";
  return pattern === "1111" ? together(gains) : (named[pattern] ?? "mixed");
}

/** Weaker than this and nothing is drawn at all. */
const silent: Decibels = -30;
/** A difference between the sides that a picture shows. */
const tilted: Decibels = 3;

/** Each side in its own ear. */
function apart([ll, , , rr]: Gains): Effect {
  if (ll * rr < 0) return "one side inverted";
  const tilt = toDecibels(Math.abs(ll) / Math.abs(rr));
  if (Math.abs(tilt) < tilted) return "straight";
  return tilt < 0 ? "left weak" : "right weak";
}

/** Both sides in both ears. */
function together([ll, lr, rl, rr]: Gains): Effect {
  if (ll * lr < 0 && rl * rr < 0) return "difference";
  if (ll * lr > 0 && rl * rr > 0 && ll * rl < 0) return "mono, one ear inverted";
  return ll * rl > 0 && lr * rr > 0 ? "mono" : "mixed";
}

const named: Readonly<Record<string, Effect>> = {
  "0001": "left gone",
  "1000": "right gone",
  "0110": "swapped",
  "0010": "left in the right ear",
  "0100": "right in the left ear",
  "1010": "left in both",
  "0101": "right in both",
  "1100": "all in the left ear",
  "0011": "all in the right ear",
};

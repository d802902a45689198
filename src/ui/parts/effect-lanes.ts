import type { Effect } from "#core/rig/effect.ts";

/** What a lane carries behind a fault. */
export type Carries = "left" | "right" | "both" | "nothing" | "weak left" | "weak right";

/** How a fault is drawn: what each ear's lane carries behind it, left first, and what ties the two where it sits. */
export interface EffectLanes {
  readonly ears: readonly [Carries, Carries];
  readonly tie?: "join" | "minus" | "twist" | "tangle";
}

export const effectLanes: Readonly<Record<Effect, EffectLanes>> = {
  straight: { ears: ["left", "right"] },
  nothing: { ears: ["nothing", "nothing"] },
  "left gone": { ears: ["nothing", "right"] },
  "right gone": { ears: ["left", "nothing"] },
  swapped: { ears: ["right", "left"] },
  mono: { ears: ["both", "both"], tie: "join" },
  difference: { ears: ["both", "both"], tie: "minus" },
  "mono, one ear inverted": { ears: ["both", "both"], tie: "tangle" },
  "one side inverted": { ears: ["left", "right"], tie: "twist" },
  "left in both": { ears: ["left", "left"] },
  "right in both": { ears: ["right", "right"] },
  "left in both, one inverted": { ears: ["left", "left"], tie: "minus" },
  "right in both, one inverted": { ears: ["right", "right"], tie: "minus" },
  "left in the right ear": { ears: ["nothing", "left"] },
  "right in the left ear": { ears: ["right", "nothing"] },
  "all in the left ear": { ears: ["both", "nothing"] },
  "all in the right ear": { ears: ["nothing", "both"] },
  "left weak": { ears: ["weak left", "right"] },
  "right weak": { ears: ["left", "weak right"] },
  mixed: { ears: ["both", "both"], tie: "tangle" },
};

export const sides = ["left", "right"] as const;
export type Side = (typeof sides)[number];

/** Whether a lane carries something of a side. */
export const carriesSide = (carries: Carries, side: Side): boolean =>
  carries === "both" || carries.endsWith(side);

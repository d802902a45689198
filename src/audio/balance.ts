import type { IAudioParam } from "standardized-audio-context";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";

/** Time constant of a change of balance, so that it does not click. */
const slide: Seconds = 0.005;

/** The gains of both sides. */
export interface Sides {
  readonly left: IAudioParam;
  readonly right: IAudioParam;
}

/** What both sides are multiplied by so that the right is so much louder than the left; neither is ever raised. */
export const sharesOf = (balance: Decibels): { readonly left: number; readonly right: number } => ({
  left: fromDecibels(Math.min(0, -balance)),
  right: fromDecibels(Math.min(0, balance)),
});

/** Goes over to a balance, from whatever it is, without a step. */
export function lean({ left, right }: Sides, balance: Decibels, now: Seconds): void {
  const to = sharesOf(balance);
  left.setTargetAtTime(to.left, now, slide);
  right.setTargetAtTime(to.right, now, slide);
}

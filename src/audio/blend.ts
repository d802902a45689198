import type { IAudioParam } from "standardized-audio-context";
import type { Version } from "#core/hearing/audition.ts";
import type { Seconds } from "#core/units/units.ts";

/**
 * How much of an audition's faulty version is heard over time, the rest being healthy: from one share to another along a
 * straight line. The shares add up to one, so no sample between is greater than the greater of the two. Times are the audio
 * context's.
 */
export interface Blend {
  readonly from: number;
  readonly to: number;
  readonly since: Seconds;
}

/** From one version alone to the other. */
const crossTime: Seconds = 0.02;

const shareOf = (heard: Version): number => (heard === "faulty" ? 1 : 0);

/** One version alone. */
export const only = (heard: Version): Blend => ({
  from: shareOf(heard),
  to: shareOf(heard),
  since: 0,
});

/** When a blend has become one version alone. */
const completion = ({ from, to, since }: Blend): Seconds => since + Math.abs(to - from) * crossTime;

/** The share of the faulty version at a time. */
export function shareAt(blend: Blend, now: Seconds): number {
  const { from, to, since } = blend;
  if (now <= since) return from;
  if (now >= completion(blend)) return to;
  return from + (Math.sign(to - from) * (now - since)) / crossTime;
}

/** The blend that goes to one version from where it is at a time. */
export const toward = (blend: Blend, heard: Version, at: Seconds): Blend => ({
  from: shareAt(blend, at),
  to: shareOf(heard),
  since: at,
});

/** The two gains of a blend. */
export type Shares = Readonly<Record<Version, IAudioParam>>;

/** Sets the gains to what they are to begin with. */
export function beginBlend({ healthy, faulty }: Shares, { to }: Blend, now: Seconds): void {
  healthy.setValueAtTime(1 - to, now);
  faulty.setValueAtTime(to, now);
}

/** Sets the gains on a blend that `toward` made of the one they are on, at a time to come. */
export function followBlend({ healthy, faulty }: Shares, blend: Blend): void {
  const { from, to, since } = blend;
  for (const [gain, first, last] of [
    [healthy, 1 - from, 1 - to] as const,
    [faulty, from, to] as const,
  ]) {
    gain.cancelScheduledValues(since);
    // What was cancelled may have been the end of a line under way: its part up to here is drawn again.
    gain.linearRampToValueAtTime(first, since);
    if (completion(blend) > since) gain.linearRampToValueAtTime(last, completion(blend));
  }
}

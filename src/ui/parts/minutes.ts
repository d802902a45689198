import type { Seconds } from "#core/units/units.ts";

/** How long something is expected to take, as people say it: up to the next half minute. */
export function minutes(seconds: Seconds): string {
  if (seconds < 60) return "less than a minute";
  const halves = Math.ceil(seconds / 30);
  return `about ${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""} min`;
}

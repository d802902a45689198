import type { NoChoice } from "#audio/outputs.ts";
import type { World } from "#audio/world.ts";

const inTheSystem =
  "On a laptop or desktop open the system's sound settings, at the loudspeaker sign, and choose the output there; a phone or a tablet plays to what was plugged in last. Then come back and hear which it is.";

/** Why no output can be chosen here, and what to do instead. */
export const noChoiceWords: Readonly<Record<NoChoice, string>> = {
  "cannot choose": `This browser plays wherever the system says. ${inTheSystem}`,
  "not allowed": `The browser did not let the names be seen: there is no microphone, or it was not allowed. Allow it for this page in the browser's settings and ask again; or choose in the system. ${inTheSystem}`,
  none: `The browser names no output but the system's own. ${inTheSystem}`,
};

/** Where the sound goes, in words. */
export function routeWords({ route: { device, first }, channels }: World): string {
  const name = device?.name ?? "whatever the system plays to";
  return first === 0 && (channels ?? 2) <= 2
    ? name
    : `outputs ${first + 1} and ${first + 2} of ${name}`;
}

export const emergency = "In an emergency: the amplifier's knob, or take them off.";

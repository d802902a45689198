import type { NoChoice } from "#audio/outputs.ts";
import type { Trouble, World } from "#audio/world.ts";
import type { Notice } from "./page.ts";

/** What went wrong with the sound, and what to do. */
export const troubleWords: Readonly<Record<Trouble, string>> = {
  "no output":
    "There is no sound output with two sides. Plug one in or choose one in the system's settings, then press Play.",
  suspended:
    "The browser holds the sound back. Press Play again; if it stays silent, allow sound for this page in the browser.",
  lost: "The output changed or went away, so the sound was stopped. Volume down first, see that the right output is chosen, then press Play: it starts quietly.",
  hidden:
    "The page was out of sight, so the sound was stopped. Press Play when you are back: it starts quietly.",
  "not loaded":
    "The part that makes the sound did not load. Look at the connection and press Play again; if that does not help, reload the page. Nothing is lost.",
  gone: "The output that was chosen has gone, so the sound was stopped. Plug it in again, or choose another under Sound out.",
  "not that device":
    "The browser would not play to the output that was chosen. Choose it again under Sound out, or let the system choose.",
  refused:
    "This sound did not pass the check that protects ears, so it was not played. Reload the page; if it comes back, do not use this copy.",
};

export const noticeWords: Readonly<Record<Notice, string>> = {
  dropped:
    "What was kept from the last session could not be understood, so it was put away. Begin anew.",
  "not loaded":
    "A part of the program did not load. Look at the connection, then reload the page. Nothing is lost.",
  "not kept":
    "This browser will not keep anything here: a private window, or a full disk. The session goes on, but a reload would lose it.",
};

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

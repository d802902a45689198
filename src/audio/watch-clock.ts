import type { Seconds } from "#core/units/units.ts";

/** How often a context is looked at; milliseconds. */
const often = 1000;
/** A clock that stood still for so long stands; milliseconds. Two looks right after each other say nothing. */
const long = 900;

/** A context of the browser or of the library. */
interface Clock {
  readonly state: string;
  readonly currentTime: Seconds;
}

/**
 * Looks at a context once a second, until told not to. A device may go without a word: `onStill` hears of a context that runs and
 * whose clock stands, `onLook` of every look.
 */
export function watchClock(context: Clock, onLook: () => void, onStill: () => void): () => void {
  let seen: { readonly at: number; readonly time: Seconds } | undefined;
  const look = () => {
    onLook();
    const now = { at: performance.now(), time: context.currentTime };
    if (context.state !== "running") seen = undefined;
    else if (seen === undefined || seen.time !== now.time) seen = now;
    else if (now.at - seen.at > long) onStill();
  };
  const timer = setInterval(look, often);
  return () => clearInterval(timer);
}

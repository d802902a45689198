import { useEffect, useRef, useState } from "preact/hooks";
import type { FlexState } from "#core/measurement/flex-watch.ts";
import type { FlexTap } from "./flex-tap.ts";

/** Milliseconds between two drawings of the strip, and two looks at the watch. */
export const drawingEvery = 80;

/** The watch's state, another one when there is something else to say; undefined while there is no watch. */
export function useFlexState(tap: FlexTap, onEvent: () => void): FlexState | undefined {
  const [state, setState] = useState(tap.watch?.state);
  const told = useRef(onEvent);
  told.current = onEvent;
  useEffect(() => {
    let [key, events] = ["", 0];
    const look = () => {
      const now = tap.watch?.state;
      const next = keyOf(now);
      if (next === key) return;
      key = next;
      setState(now);
      const latest = now?.events.at(-1)?.id ?? 0;
      if (latest > events) told.current();
      events = latest;
    };
    const timer = setInterval(look, drawingEvery);
    return () => clearInterval(timer);
  }, [tap]);
  return state;
}

/** What, when it is another, has to be said anew; seconds count, not their parts. */
function keyOf(state: FlexState | undefined): string {
  if (state === undefined) return "";
  const { status, now, events, marks, marksDropped } = state;
  const last = events.at(-1);
  return JSON.stringify([
    status,
    Math.floor(now),
    last && [last.id, last.breaks, last.going, last.fault],
    marks.length + marksDropped,
  ]);
}

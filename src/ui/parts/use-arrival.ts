import type { RefObject } from "preact";
import { useEffect } from "preact/hooks";

/** Brings a screen to its beginning when it appears: to the top, and the focus to where it goes on. */
export function useArrival(place: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    scrollTo(0, 0);
    place.current?.focus({ preventScroll: true });
  }, [place]);
}

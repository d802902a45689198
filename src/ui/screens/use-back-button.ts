import { useEffect, useState } from "preact/hooks";
import { stepsBack, stepsIn } from "./back-from.ts";
import type { View } from "./page.ts";
import type { Held } from "./use-page.ts";

/**
 * The browser's own way back, a button or a swipe, is that of the page: as many places lie in the tab's history as there are steps back
 * from the screen that is shown, so that only the first screen is left by it. Forward leads nowhere.
 */
export function useBackButton({ page: { view }, show }: Pick<Held, "page" | "show">): void {
  const [trail] = useState(() => new Trail());
  useEffect(() => trail.lead(view, show));
  useEffect(() => {
    const popped = () => trail.popped();
    window.addEventListener("popstate", popped);
    return () => window.removeEventListener("popstate", popped);
  }, [trail]);
}

/** The places of the tab's history that are the page's. */
class Trail {
  /** How far in the place lies that the browser stands at. */
  #at = placeNow();
  /** The page sent the browser to a place it has not reached yet. */
  #sent = false;
  #waiting: ReturnType<typeof setTimeout> | undefined;
  #view: View = { screen: "start" };
  #show: (view: View) => void = () => undefined;

  /** Has as many places behind the browser as the screen has steps back. */
  lead(view: View, show: (view: View) => void): void {
    this.#view = view;
    this.#show = show;
    if (this.#sent) return;
    const steps = stepsIn(view);
    while (this.#at < steps) history.pushState({ [place]: ++this.#at }, "");
    if (this.#at > steps) this.#send(steps - this.#at);
  }

  /** The browser went to another place: by itself, or sent. */
  popped(): void {
    const before = this.#at;
    const byPress = !this.#sent;
    this.#sent = false;
    this.#at = placeNow();
    clearTimeout(this.#waiting);
    // The next may come before this one is drawn.
    if (byPress) this.#view = stepsBack(this.#view, before - this.#at);
    if (byPress && this.#at < before) this.#show(this.#view);
    else this.lead(this.#view, this.#show);
  }

  /** Where the browser has no such place it stays, and tells nobody. */
  #send(places: number): void {
    this.#sent = true;
    history.go(places);
    this.#waiting = setTimeout(() => this.#stayed(), patience);
  }

  #stayed(): void {
    this.#sent = false;
    this.#at = 0;
    history.replaceState(null, "");
    this.lead(this.#view, this.#show);
  }
}

const place = "place";
/** A browser is at another place of its own long before, milliseconds. */
const patience = 1000;

/** The number that a place of the tab's history was given; that at which the page was opened has none. */
function placeNow(): number {
  const state: unknown = history.state;
  const kept = typeof state === "object" && state !== null && place in state ? state[place] : 0;
  return typeof kept === "number" ? kept : 0;
}

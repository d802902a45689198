import { useEffect } from "preact/hooks";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Held } from "./use-page.ts";

/** The place of the hands-up pass: everybody at once. */
export const wholeTable = "everybody";

/** The headphones of whoever has the page before them, which are in no rig. */
export const ownHeadphones = "own headphones";

/** Goes to a place to listen at: a position, or what has a name of its own. */
export function useArrive({ edges: { player } }: Held, place: string): void {
  const { arrive } = player;
  useEffect(() => arrive(place), [arrive, place]);
}

/** Goes to a place to listen at, and makes ready what will be played there once the screen stands. */
export function usePlace(held: Held, place: string, signal: SignalName): void {
  const { prepare } = held.edges.player;
  useArrive(held, place);
  useEffect(() => {
    const soon = setTimeout(() => prepare(signal, 0));
    return () => clearTimeout(soon);
  }, [prepare, signal]);
}

import { useEffect } from "preact/hooks";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Held } from "./use-page.ts";

/** The place of the hands-up pass: everybody at once. */
export const wholeTable = "everybody";

/** The headphones of whoever has the page before them, which are in no rig. */
export function useOwnPlace({ edges: { player } }: Held): void {
  const { arrive } = player;
  useEffect(() => arrive("own headphones"), [arrive]);
}

/** Goes to a place to listen at, and makes ready what will be played there once the screen stands. */
export function usePlace({ edges: { player } }: Held, place: string, signal: SignalName): void {
  const { arrive, prepare } = player;
  useEffect(() => arrive(place), [arrive, place]);
  useEffect(() => {
    const soon = setTimeout(() => prepare(signal, 0));
    return () => clearTimeout(soon);
  }, [prepare, signal]);
}

import { useEffect, useState } from "preact/hooks";
import { type Bench, hide } from "#core/bench/bench.ts";
import type { Rig } from "#core/rig/rig.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { rigIn } from "#core/session/log.ts";
import type { Page } from "./page.ts";

/** What follows from the log, with the bench beside it; the bench is never handed to what derives. */
export interface Ready {
  readonly derived: Derived;
  readonly bench: Bench | undefined;
}

interface Made {
  readonly rig: Rig;
  readonly seed: number | undefined;
  readonly bench: Bench | undefined;
}

/**
 * Derives the page's log. The first time for a rig takes a fraction of a second, so the screen is drawn before it;
 * `onBroken` hears of a kept log that no rig can be made of.
 */
export function useReady({ log, seed, view }: Page, onBroken: () => void): Ready | undefined {
  const [made, setMade] = useState<Made>();
  const rig = view.screen === "start" ? undefined : rigIn(log);
  const fits = rig !== undefined && made?.rig === rig && made.seed === seed;
  useEffect(() => {
    if (rig === undefined || fits) return;
    const soon = setTimeout(() => {
      try {
        derive(log);
        setMade({ rig, seed, bench: seed === undefined ? undefined : hide(rig, seed) });
      } catch {
        onBroken();
      }
    });
    return () => clearTimeout(soon);
  });
  const derived = fits ? derive(log) : undefined;
  return derived && { derived, bench: made?.bench };
}

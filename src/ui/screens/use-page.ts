import { useEffect, useState } from "preact/hooks";
import type { Player, World } from "#audio/player.ts";
import type { Rig } from "#core/rig/rig.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import type { Said } from "#core/session/log.ts";
import type { Store } from "#storage/store.ts";
import { begun, dropped, entered, firstPage, type Page, tookBack, type View } from "./page.ts";
import { type Ready, useReady } from "./ready.ts";
import { useWorld } from "./use-world.ts";

/** Everything outside the page, handed in. */
export interface Edges {
  readonly player: Player;
  readonly store: Store;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** A whole number drawn by chance, never the same order twice. */
  readonly chance: () => number;
}

export interface Doings {
  /** Begins a session with real gear. */
  readonly begin: (rig: Rig) => void;
  /** Begins one with the bench rig of a number. */
  readonly bench: (seed: number) => void;
  readonly show: (view: View) => void;
  readonly enter: (said: Said) => void;
  readonly takeBack: () => void;
  readonly turn: () => void;
  readonly sounded: () => void;
}

export interface Held {
  readonly page: Page;
  readonly world: World;
  readonly ready: Ready | undefined;
  readonly edges: Edges;
  readonly doings: Doings;
}

/** The rig the bench simulates. */
const [benchRig = straightIn] = builtInRigs;

/** The page, what the world does to it, and what a press may do. */
export function usePage(edges: Edges): Held {
  const { player, store, now } = edges;
  const [page, setPage] = useState(() => firstPage(store.read()));
  const world = useWorld(player);
  const ready = useReady(page, () => setPage(dropped(page)));
  const { log, seed } = page;
  useEffect(() => {
    if (log.length > 0 && !store.keep({ log, seed }))
      setPage((one) => ({ ...one, notice: "not kept" }));
  }, [log, seed, store]);
  useEffect(() => player.warm(), [player]);
  /** Where no hand is asked for any more, sound may be played again. */
  const go = (next: Page) => {
    if (player.world().muted && !asksForHands(next)) player.handOff();
    setPage(next);
  };
  const doings: Doings = {
    begin: (rig) => setPage(begun(page, rig, undefined, now())),
    bench: (number) => setPage(begun(page, benchRig, number, now())),
    show: (view) => {
      player.silence();
      setPage({ ...page, view });
    },
    enter: (said) => go(entered(page, said, now())),
    takeBack: () => go(tookBack(page, now())),
    turn: () => setPage({ ...page, facing: !page.facing }),
    sounded: () => setPage({ ...page, sounded: true }),
  };
  return { page, world, ready, edges, doings };
}

/** Whether the next thing at the position in hand is to touch the gear. */
export function asksForHands({ log, view }: Page): boolean {
  if (view.screen !== "position") return true;
  const advice = derive(log)?.standing(view.position).advice;
  return (
    advice?.advice === "verdict" ||
    (advice?.advice === "ask" && advice.option.asked.check === "look")
  );
}

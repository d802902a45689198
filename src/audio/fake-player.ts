import { startLevel } from "#core/signals/caps.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import type { Ending, Player, World } from "./player.ts";

/** What was asked of the player, in order. */
type Call =
  | {
      readonly asked: "play";
      readonly name: SignalName;
      readonly seed: number;
      readonly through?: EarMatrix;
    }
  | { readonly asked: "warm" | "silence" | "louder" | "softer" | "handOn" | "handOff" | "close" };

/** A player that makes no sound and keeps what it was asked. */
export interface FakePlayer extends Player {
  readonly calls: readonly Call[];
  /** Lets something happen in the world of sound. */
  readonly change: (part: Partial<World>) => void;
  /** How every play ends from now on. */
  readonly endWith: (ending: Ending) => void;
}

/** A fake: each play ends at once as told, "played" at first; the level never moves by itself. */
export function createFakePlayer(): FakePlayer {
  const calls: Call[] = [];
  const listeners = new Set<() => void>();
  let ending: Ending = { ended: "played" };
  let world: World = {
    trouble: undefined,
    playing: false,
    level: startLevel,
    muted: false,
    lowered: false,
    delay: undefined,
  };
  const change = (part: Partial<World>) => {
    world = { ...world, ...part };
    for (const listener of listeners) listener();
  };
  const note = (asked: Exclude<Call["asked"], "play">) => () => void calls.push({ asked });
  return {
    calls,
    change,
    endWith: (next) => {
      ending = next;
    },
    play: (name, seed, through) => {
      calls.push({ asked: "play", name, seed, ...(through && { through }) });
      if (world.muted) return Promise.resolve({ ended: "silenced" });
      change({ trouble: ending.ended === "trouble" ? ending.why : undefined });
      return Promise.resolve(ending);
    },
    warm: note("warm"),
    silence: note("silence"),
    louder: note("louder"),
    softer: note("softer"),
    close: note("close"),
    handOn: () => {
      calls.push({ asked: "handOn" });
      change({ muted: true });
    },
    handOff: () => {
      calls.push({ asked: "handOff" });
      change({ muted: false });
    },
    world: () => world,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

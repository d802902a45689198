import type { Audition, Version } from "#core/hearing/audition.ts";
import { startLevel } from "#core/signals/caps.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import type { Ending, Player } from "./player.ts";
import type { AuditionHow } from "./programme.ts";
import { Watched } from "./watched.ts";
import type { World } from "./world.ts";

type Press = "warm" | "silence" | "louder" | "softer" | "handOn" | "handOff" | "close";

/** What was asked of the player, in order. */
type Call =
  | {
      readonly asked: "play";
      readonly name: SignalName;
      readonly seed: number;
      readonly through?: EarMatrix;
    }
  | { readonly asked: "audition"; readonly audition: Audition; readonly how: AuditionHow }
  | { readonly asked: "hear"; readonly version: Version }
  | { readonly asked: Press };

/** A player that makes no sound and keeps what it was asked. */
export interface FakePlayer extends Player {
  readonly calls: readonly Call[];
  /** Lets something happen in the world of sound. */
  readonly change: (part: Partial<World>) => void;
  /** How every play ends from now on. */
  readonly endWith: (ending: Ending) => void;
}

const atFirst: World = {
  trouble: undefined,
  playing: false,
  heard: undefined,
  silences: 0,
  level: startLevel,
  muted: false,
  lowered: false,
  delay: undefined,
};

/** What a fake begins and silences: a loop lasts until it is silenced, all else ends at once as told. */
function createFakeSound({ now, change }: Watched<World>, ending: () => Ending) {
  let stop: (() => void) | undefined;
  const silence = () => {
    if (stop) change({ playing: false, heard: undefined });
    stop?.();
    stop = undefined;
  };
  const start = (loop: boolean, heard?: Version): Promise<Ending> => {
    silence();
    if (now().muted) return Promise.resolve({ ended: "silenced" });
    const told = ending();
    const trouble = told.ended === "trouble" ? told.why : undefined;
    change({ trouble });
    if (!loop || trouble) return Promise.resolve(told);
    change({ playing: true, heard });
    return new Promise((resolve) => {
      stop = () => resolve({ ended: "silenced" });
    });
  };
  return { start, silence };
}

/**
 * A fake: each play, and each audition that does not loop, ends at once as told, "played" at first; one that loops is heard
 * until it is silenced. The level never moves by itself.
 */
export function createFakePlayer(): FakePlayer {
  const calls: Call[] = [];
  const world = new Watched(atFirst);
  let ending: Ending = { ended: "played" };
  const { start, silence } = createFakeSound(world, () => ending);
  const note = (asked: Press) => () => {
    calls.push({ asked });
    if (asked === "silence" || asked === "handOn" || asked === "close") {
      silence();
      world.change({ silences: world.now().silences + 1 });
    }
    if (asked === "handOn" || asked === "handOff") world.change({ muted: asked === "handOn" });
  };
  return {
    calls,
    change: world.change,
    endWith: (next) => {
      ending = next;
    },
    play: (name, seed, through) => {
      calls.push({ asked: "play", name, seed, ...(through && { through }) });
      return start(false);
    },
    audition: (audition, how = {}) => {
      calls.push({ asked: "audition", audition, how });
      return start(how.loop ?? false, how.first ?? "healthy");
    },
    hear: (version) => {
      calls.push({ asked: "hear", version });
      if (world.now().heard) world.change({ heard: version });
    },
    rate: () => 48_000,
    warm: note("warm"),
    silence: note("silence"),
    louder: note("louder"),
    softer: note("softer"),
    close: note("close"),
    handOn: note("handOn"),
    handOff: note("handOff"),
    world: world.now,
    subscribe: world.subscribe,
  };
}

import type { Audition, Version } from "#core/hearing/audition.ts";
import type { Prompt } from "#core/prompts/prompt.ts";
import type { SpokenTag } from "#core/prompts/speaking.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Decibels } from "#core/units/units.ts";
import type { Ending, Player } from "./player.ts";
import type { AuditionHow, PlayHow } from "./programme.ts";
import type { Route } from "./route.ts";
import type { SpeakHow } from "./speech.ts";
import { Watched } from "./watched.ts";
import { atFirst, type World } from "./world.ts";

type Press = "warm" | "silence" | "louder" | "softer" | "handOn" | "handOff" | "close";

/** What was asked of the player, in order. */
type Call =
  | {
      readonly asked: "play";
      readonly name: SignalName;
      readonly seed: number;
      readonly how: PlayHow;
    }
  | { readonly asked: "speak"; readonly prompts: readonly Prompt[]; readonly how: SpeakHow }
  | { readonly asked: "arrive"; readonly place: string }
  | { readonly asked: "balance"; readonly right: Decibels }
  | { readonly asked: "use"; readonly route: Route }
  | { readonly asked: "audition"; readonly audition: Audition; readonly how: AuditionHow }
  | { readonly asked: "hear"; readonly version: Version }
  | { readonly asked: Press };

/** A player that makes no sound and keeps what it was asked. */
export interface FakePlayer extends Player {
  readonly calls: readonly Call[];
  /** In which language it would speak. */
  readonly spokenIn: () => SpokenTag;
  /** Lets something happen in the world of sound. */
  readonly change: (part: Partial<World>) => void;
  /** How every play ends from now on. */
  readonly endWith: (ending: Ending) => void;
}

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
    if (asked === "handOn") world.change({ muted: true });
    if (asked === "handOff") world.change({ muted: false, turnedUp: false });
  };
  return {
    calls,
    change: world.change,
    endWith: (next) => {
      ending = next;
    },
    prepare: () => {},
    play: (name, seed, how = {}) => {
      calls.push({ asked: "play", name, seed, how });
      return start(how.loop ?? false);
    },
    ...tongue(),
    speak: (prompts, how = {}) => {
      calls.push({ asked: "speak", prompts, how });
      return start(false);
    },
    ...settings(world, (call) => calls.push(call), silence),
    audition: (audition, how = {}) => {
      calls.push({ asked: "audition", audition, how });
      return start(how.loop ?? false, how.first ?? "healthy");
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

/** In which language it would speak. */
function tongue() {
  let spoken: SpokenTag = "en";
  return {
    spokenIn: () => spoken,
    speakIn: (tag: SpokenTag) => {
      spoken = tag;
    },
  };
}

/** What may be set whether or not something sounds. */
function settings(
  { now, change }: Watched<World>,
  note: (call: Call) => void,
  silence: () => void,
): Pick<Player, "hear" | "balance" | "arrive" | "use"> {
  return {
    hear: (version) => {
      note({ asked: "hear", version });
      if (now().heard) change({ heard: version });
    },
    balance: (right) => {
      note({ asked: "balance", right });
      change({ balance: right });
    },
    arrive: (place) => {
      note({ asked: "arrive", place });
      silence();
    },
    use: (route) => {
      note({ asked: "use", route });
      silence();
      change({ route, trouble: undefined });
    },
  };
}

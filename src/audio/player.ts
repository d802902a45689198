import { admit } from "#core/signals/admit.ts";
import { handDrop, levelFloor, levelStep, startLevel } from "#core/signals/caps.ts";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import { levelAt, moved, steady } from "./course.ts";
import { type EarMatrix, tamed } from "./ear-matrix.ts";
import { type Load, Output, type OutputTrouble } from "./output.ts";
import { begin, fadeOut, follow, type PlayingGraph } from "./playing.ts";

/** Why nothing sounds; each has its words in the ui. */
export type Trouble = OutputTrouble | "refused";

export type Ending =
  | { readonly ended: "played" }
  | { readonly ended: "silenced" }
  | { readonly ended: "trouble"; readonly why: Trouble };

/** The world of sound as it is now; another value when it changed. */
export interface World {
  /** Until the next press of play. */
  readonly trouble: Trouble | undefined;
  /** From the press to the end of the sound. */
  readonly playing: boolean;
  /** Level of an ident as it leaves the program, or is on its way to. */
  readonly level: DecibelsFullScale;
  /** A hand is on a plug, lead, switch or amplifier. */
  readonly muted: boolean;
  /** The level is lower than it was before a hand touched something. */
  readonly lowered: boolean;
  /** From the program to the ear, where the browser says. */
  readonly delay: Seconds | undefined;
}

/** All sound there is. Every member may be handed on by itself. */
export interface Player {
  /** Fetches what a press will need, once the first screen stands. */
  readonly warm: () => void;
  /**
   * Plays a signal, as it is or as a feed with this ear matrix would sound. To be called in a press. Silences what was
   * playing; plays nothing while muted. What the world does against it is an ending, never a rejection.
   */
  readonly play: (name: SignalName, seed: number, through?: EarMatrix) => Promise<Ending>;
  /** To zero within 20 ms, from anything. */
  readonly silence: () => void;
  /** One step up, along a ramp, as far as the cap; nothing before the first sound. */
  readonly louder: () => void;
  /** One step down, along a ramp, as far as the floor; nothing before the first sound. */
  readonly softer: () => void;
  /** Silence until `handOff`: call it before a hand touches plug, lead, switch or amplifier. */
  readonly handOn: () => void;
  /** Sound may be played again, 20 dB lower than before; before the first sound at the start level. */
  readonly handOff: () => void;
  readonly world: () => World;
  /** Calls back after every change of the world; returns how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
  readonly close: () => void;
}

/** The real player. `load` fetches the file that makes contexts. */
export const createPlayer = (load: Load = () => import("./new-context.ts")): Player =>
  new WebPlayer(load);

/** One press of play. */
interface Run {
  readonly resolve: (ending: Ending) => void;
  graph?: PlayingGraph;
}

/** A sound that has not ended this long after it should have is on no device any more. */
const overdue: Seconds = 2;

class WebPlayer implements Player {
  readonly #output: Output;
  readonly #listeners = new Set<() => void>();
  #world: World = {
    trouble: undefined,
    playing: false,
    level: startLevel,
    muted: false,
    lowered: false,
    delay: undefined,
  };
  #course = steady(startLevel);
  #run: Run | undefined;
  #sounded = false;
  /** The level before a hand touched something, until it is reached again. */
  #before = Number.NEGATIVE_INFINITY;

  constructor(load: Load) {
    this.#output = new Output(load, (why) => this.#fail(why));
  }

  readonly warm = () => void this.#output.warm();
  readonly world = () => this.#world;
  readonly silence = () => this.#end({ ended: "silenced" });
  readonly louder = () => this.#move(levelStep);
  readonly softer = () => this.#move(-levelStep);

  readonly subscribe = (listener: () => void) => {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  };

  readonly close = () => {
    this.silence();
    this.#output.close();
  };

  readonly play = (name: SignalName, seed: number, through?: EarMatrix): Promise<Ending> => {
    this.silence();
    if (this.#world.muted) return Promise.resolve({ ended: "silenced" });
    return new Promise((resolve) => {
      const run: Run = { resolve };
      this.#run = run;
      this.#change({ playing: true, trouble: undefined });
      this.#start(run, name, seed, through).catch(() => this.#fail("lost", run));
    });
  };

  readonly handOn = () => {
    this.silence();
    this.#change({ muted: true });
  };

  readonly handOff = () => {
    if (!this.#world.muted) return;
    if (this.#sounded) this.#lower();
    this.#change({ muted: false });
  };

  async #start(run: Run, name: SignalName, seed: number, through?: EarMatrix): Promise<void> {
    const context = await this.#output.open();
    if (this.#run !== run) return;
    if (typeof context === "string") return this.#fail(context);
    const sound = admit(render(name, context.sampleRate, seed));
    const ears = through && tamed(through);
    if ("refused" in sound || (through && !ears)) return this.#fail("refused");
    run.graph = begin(context, sound, ears, this.#course, () => {
      if (this.#run === run) this.#end({ ended: "played" });
    });
    this.#sounded = true;
    setTimeout(() => this.#fail("lost", run), (signals[name].duration + overdue) * 1000);
  }

  #end(ending: Ending): void {
    const run = this.#run;
    const now = this.#output.context?.currentTime;
    if (run === undefined) return;
    this.#run = undefined;
    if (run.graph && now !== undefined && ending.ended !== "played") fadeOut(run.graph, now);
    this.#change({ playing: false, delay: this.#output.delay });
    run.resolve(ending);
  }

  /** Ends everything for a reason; given a run, only while that run lasts. */
  #fail(why: Trouble, run = this.#run): void {
    if (run !== this.#run) return;
    this.#settle(Math.min(startLevel, this.#course.to));
    this.#change({ trouble: why });
    this.#end({ ended: "trouble", why });
    this.#output.drop();
  }

  #move(by: number): void {
    const now = this.#output.context?.currentTime;
    if (now === undefined) return;
    this.#course = moved(this.#course, by, now);
    if (this.#run?.graph) follow(this.#run.graph.level, this.#course, now);
    const lowered = this.#course.to < this.#before;
    if (!lowered) this.#before = Number.NEGATIVE_INFINITY;
    this.#change({ level: this.#course.to, lowered });
  }

  #lower(): void {
    this.#before = Math.max(this.#before, this.#course.to);
    this.#settle(Math.max(levelFloor, this.#quieter() - handDrop));
    this.#change({ lowered: true });
  }

  /** The lesser of the level now and the one it is going to. */
  #quieter(): DecibelsFullScale {
    const now = this.#output.context?.currentTime ?? Number.POSITIVE_INFINITY;
    return Math.min(levelAt(this.#course, now), this.#course.to);
  }

  /** Sets the level while nothing sounds, or for the next sound. */
  #settle(level: DecibelsFullScale): void {
    this.#course = steady(level);
    this.#change({ level });
  }

  #change(part: Partial<World>): void {
    this.#world = { ...this.#world, ...part };
    for (const listener of this.#listeners) listener();
  }
}

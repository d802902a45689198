import type { Audition, Version } from "#core/hearing/audition.ts";
import { levelStep, startLevel } from "#core/signals/caps.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import { type Blend, only } from "./blend.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import { afterHand, afterTrouble, isLowered, type Loudness, quiet, stepped } from "./loudness.ts";
import { type Load, Output } from "./output.ts";
import { begin, cross, fadeOut, follow, type PlayingGraph } from "./playing.ts";
import { type AuditionHow, ofAudition, ofSignal, type Programme } from "./programme.ts";
import { Watched } from "./watched.ts";
import type { Trouble, World } from "./world.ts";

export type Ending =
  | { readonly ended: "played" }
  | { readonly ended: "silenced" }
  | { readonly ended: "trouble"; readonly why: Trouble };

/** All sound there is. Every member may be handed on by itself. */
export interface Player {
  /** Fetches what a press will need, once the first screen stands. */
  readonly warm: () => void;
  /**
   * Plays a signal, as it is or as a feed with this ear matrix would sound. To be called in a press. Silences what was
   * playing; plays nothing while muted. What the world does against it is an ending, never a rejection.
   */
  readonly play: (name: SignalName, seed: number, through?: EarMatrix) => Promise<Ending>;
  /**
   * Plays a healthy and a faulty version in step, one of them heard; `hear` goes over to the other. Else as `play`. Once,
   * unless it is to loop: then it begins again without a gap until it is silenced. To hear one chain alone, begin with it.
   */
  readonly audition: (audition: Audition, how?: AuditionHow) => Promise<Ending>;
  /** Goes over to a version of what `audition` plays, along a ramp of 20 ms; nothing while no audition plays. */
  readonly hear: (version: Version) => void;
  /** Sampling rate of the output, at which a sound is best prepared; 48 kHz before there is one. */
  readonly rate: () => Hertz;
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
  blend: Blend;
  graph?: PlayingGraph;
}

/** A sound that has not ended this long after it should have is on no device any more. */
const overdue: Seconds = 2;
/** Rate of most outputs. */
const usualRate: Hertz = 48_000;

class WebPlayer implements Player {
  readonly #output: Output;
  readonly #world = new Watched<World>({
    trouble: undefined,
    playing: false,
    heard: undefined,
    silences: 0,
    level: startLevel,
    muted: false,
    lowered: false,
    delay: undefined,
  });
  #loudness = quiet;
  #run: Run | undefined;
  #sounded = false;

  constructor(load: Load) {
    this.#output = new Output(load, (why) => this.#fail(why));
  }

  readonly warm = () => void this.#output.warm();
  readonly world = this.#world.now;
  readonly subscribe = this.#world.subscribe;
  readonly rate = () => this.#output.context?.sampleRate ?? usualRate;

  readonly silence = () => {
    this.#end({ ended: "silenced" });
    this.#world.change({ silences: this.#world.now().silences + 1 });
  };

  readonly louder = () => this.#move(levelStep);
  readonly softer = () => this.#move(-levelStep);

  readonly close = () => {
    this.silence();
    this.#output.close();
  };

  readonly play = (name: SignalName, seed: number, through?: EarMatrix): Promise<Ending> =>
    this.#press((rate) => ofSignal(name, seed, rate, through));

  readonly audition = (audition: Audition, { loop, first }: AuditionHow = {}): Promise<Ending> =>
    this.#press(() => ofAudition(audition, loop ?? false), first ?? "healthy");

  readonly hear = (version: Version) => {
    const [run, { context }] = [this.#run, this.#output];
    if (run === undefined || this.#world.now().heard === undefined) return;
    run.blend =
      run.graph && context ? cross(context, run.graph, run.blend, version) : only(version);
    this.#world.change({ heard: version });
  };

  readonly handOn = () => {
    this.silence();
    this.#world.change({ muted: true });
  };

  readonly handOff = () => {
    if (!this.#world.now().muted) return;
    const now = this.#output.context?.currentTime ?? Number.POSITIVE_INFINITY;
    if (this.#sounded) this.#set(afterHand(this.#loudness, now));
    this.#world.change({ muted: false });
  };

  /** Begins what is to be made for the output's rate, unless muted. */
  #press(make: (rate: Hertz) => Programme | undefined, heard?: Version): Promise<Ending> {
    this.#end({ ended: "silenced" });
    if (this.#world.now().muted) return Promise.resolve({ ended: "silenced" });
    return new Promise((resolve) => {
      const run: Run = { resolve, blend: only(heard ?? "healthy") };
      this.#run = run;
      this.#world.change({ playing: true, trouble: undefined, heard });
      this.#start(run, make).catch(() => this.#fail("lost", run));
    });
  }

  async #start(run: Run, make: (rate: Hertz) => Programme | undefined): Promise<void> {
    const context = await this.#output.open();
    if (this.#run !== run) return;
    if (typeof context === "string") return this.#fail(context);
    const programme = make(context.sampleRate);
    if (programme === undefined) return this.#fail("refused");
    run.graph = begin(context, programme, this.#loudness.course, run.blend, () => {
      if (this.#run === run) this.#end({ ended: "played" });
    });
    this.#sounded = true;
    if (programme.lasts === "until silenced") return;
    setTimeout(() => this.#fail("lost", run), (programme.lasts + overdue) * 1000);
  }

  #end(ending: Ending): void {
    const run = this.#run;
    const now = this.#output.context?.currentTime;
    if (run === undefined) return;
    this.#run = undefined;
    if (run.graph && now !== undefined && ending.ended !== "played") fadeOut(run.graph, now);
    this.#world.change({ playing: false, heard: undefined, delay: this.#output.delay });
    run.resolve(ending);
  }

  /** Ends everything for a reason; given a run, only while that run lasts. */
  #fail(why: Trouble, run = this.#run): void {
    if (run !== this.#run) return;
    this.#set(afterTrouble(this.#loudness));
    this.#world.change({ trouble: why });
    this.#end({ ended: "trouble", why });
    this.#output.drop();
  }

  #move(by: Decibels): void {
    const now = this.#output.context?.currentTime;
    if (now === undefined) return;
    this.#set(stepped(this.#loudness, by, now));
    if (this.#run?.graph) follow(this.#run.graph.level, this.#loudness.course, now);
  }

  #set(loudness: Loudness): void {
    this.#loudness = loudness;
    this.#world.change({ level: loudness.course.to, lowered: isLowered(loudness) });
  }
}

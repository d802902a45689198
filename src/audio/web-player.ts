import type { Audition, Version } from "#core/hearing/audition.ts";
import type { Prompt } from "#core/prompts/prompt.ts";
import type { SpokenTag } from "#core/prompts/speaking.ts";
import { levelStep } from "#core/signals/caps.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import { lean } from "./balance.ts";
import { only } from "./blend.ts";
import { fadeOut } from "./fade.ts";
import { type Load, Output } from "./output.ts";
import { Places } from "./places.ts";
import type { Ending, Player } from "./player.ts";
import { begin, cross, follow } from "./playing.ts";
import { type AuditionHow, ofAudition, ofSignal, type PlayHow, Prepared } from "./programme.ts";
import type { Route } from "./route.ts";
import type { Make, Run } from "./run.ts";
import { type FetchWord, type SpeakHow, Speech, shippedWords } from "./speech.ts";
import { Watched } from "./watched.ts";
import { atFirst, type Trouble, type World } from "./world.ts";

/** The real player. `load` fetches the file that makes contexts, `words` the files of what is spoken. */
export const createPlayer = (
  load: Load = () => import("./new-context.ts"),
  words: FetchWord = shippedWords,
): Player => new WebPlayer(load, words);

/** A sound that has not ended this long after it should have is on no device any more. */
const overdue: Seconds = 2;
/** Rate of most outputs. */
const usualRate: Hertz = 48_000;

class WebPlayer implements Player {
  readonly #output: Output;
  readonly #world = new Watched<World>(atFirst);
  readonly #places = new Places(this.#world);
  readonly #prepared = new Prepared();
  readonly #speech: Speech;
  #run: Run | undefined;
  #sounded = false;

  constructor(load: Load, words: FetchWord) {
    this.#speech = new Speech(words);
    this.#output = new Output(load, (why) => this.#fail(why));
  }

  readonly warm = () => void this.#output.warm();
  readonly world = this.#world.now;
  readonly subscribe = this.#world.subscribe;
  readonly rate = () => this.#output.context?.sampleRate ?? usualRate;
  readonly prepare = (name: SignalName, seed: number) =>
    void this.#prepared.get(name, seed, this.rate());

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

  readonly play = (name: SignalName, seed: number, how: PlayHow = {}): Promise<Ending> =>
    this.#press(({ sampleRate }) => ofSignal(name, seed, sampleRate, how, this.#prepared));

  readonly speakIn = (tag: SpokenTag) => {
    this.#speech.tag = tag;
  };

  readonly speak = (prompts: readonly Prompt[], how: SpeakHow = {}): Promise<Ending> =>
    this.#press((context) => this.#speech.said(prompts, context, how));

  readonly audition = (
    audition: Audition,
    { loop, first, turnedUp }: AuditionHow = {},
  ): Promise<Ending> =>
    this.#press(() => ofAudition(audition, loop ?? false, turnedUp), first ?? "healthy");

  readonly hear = (version: Version) => {
    const [run, { context }] = [this.#run, this.#output];
    if (run === undefined || this.#world.now().heard === undefined) return;
    const { graph } = run.sounding ?? {};
    run.blend = graph && context ? cross(context, graph, run.blend, version) : only(version);
    this.#world.change({ heard: version });
  };

  readonly balance = (right: Decibels) => {
    const { sides } = this.#run?.sounding?.graph ?? {};
    if (sides) lean(sides, right, this.#now);
    this.#world.change({ balance: right });
  };

  readonly arrive = (place: string) => {
    this.silence();
    this.#places.arrive(place, this.#now);
  };

  readonly handOn = () => {
    this.silence();
    this.#places.handOn();
    this.#world.change({ muted: true });
  };

  readonly handOff = () => {
    if (!this.#world.now().muted) return;
    this.#places.handOff(this.#sounded, this.#now);
    this.#world.change({ muted: false, turnedUp: false });
  };

  readonly use = (route: Route) => {
    this.silence();
    this.#places.calm();
    this.#output.use(route);
    this.#world.change({ route, channels: undefined, delay: undefined, trouble: undefined });
  };

  /** On the context's clock; before there is one, when everything has arrived. */
  get #now(): Seconds {
    return this.#output.context?.currentTime ?? Number.POSITIVE_INFINITY;
  }

  /** Begins what is to be made for the output's rate, unless muted. */
  #press(make: Make, heard?: Version): Promise<Ending> {
    this.#end({ ended: "silenced" });
    if (this.#world.now().muted) return Promise.resolve({ ended: "silenced" });
    return new Promise((resolve) => {
      const run: Run = { resolve, blend: only(heard ?? "healthy") };
      this.#run = run;
      this.#world.change({ playing: true, trouble: undefined, heard });
      this.#start(run, make).catch(() => this.#fail("lost", run));
    });
  }

  async #start(run: Run, make: Make): Promise<void> {
    const context = await this.#output.open();
    if (this.#run !== run) return;
    if (typeof context === "string") return this.#fail(context);
    const made = make(context);
    const programme = made instanceof Promise ? await made : made;
    if (this.#run !== run) return;
    if (typeof programme === "string") return this.#fail(programme);
    const counted = context.currentTime;
    const { course } = this.#places;
    const { balance, route } = this.#world.now();
    const beginning = { course, blend: run.blend, balance, first: route.first };
    const graph = begin(context, programme, beginning, () => {
      if (this.#run === run) this.#end({ ended: "played" });
    });
    run.sounding = { graph, programme, counted };
    this.#sounded = true;
    this.#world.change({ channels: context.destination.maxChannelCount });
    if (programme.loop) return;
    setTimeout(() => this.#fail("lost", run), (programme.lasts + overdue) * 1000);
  }

  #end(ending: Ending): void {
    const run = this.#run;
    if (run === undefined) return;
    this.#run = undefined;
    this.#count(run);
    const { graph, programme } = run.sounding ?? {};
    const { context } = this.#output;
    if (graph && context && ending.ended !== "played") fadeOut(context, graph);
    this.#world.change({ playing: false, heard: undefined, delay: this.#output.delay });
    if (programme?.turnedUp) {
      this.#places.calm();
      this.#world.change({ muted: true, turnedUp: true });
    }
    run.resolve(ending);
  }

  /** Ends everything for a reason; given a run, only while that run lasts. */
  #fail(why: Trouble, run = this.#run): void {
    if (run !== this.#run) return;
    this.#world.change({ trouble: why });
    this.#end({ ended: "trouble", why });
    this.#places.calm();
    this.#output.drop();
  }

  #move(by: Decibels): void {
    if (this.#output.context === undefined) return;
    if (this.#run) this.#count(this.#run);
    this.#places.step(by, this.#now);
    const { graph } = this.#run?.sounding ?? {};
    if (graph) follow(graph.level, this.#places.course, this.#now);
  }

  /** Counts what was heard of a run since it was last counted. */
  #count({ sounding }: Run): void {
    const { context } = this.#output;
    if (sounding === undefined || context === undefined) return;
    const { currentTime } = context;
    this.#places.count(sounding.counted, currentTime, sounding.programme.sounding);
    sounding.counted = currentTime;
  }
}

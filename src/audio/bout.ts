import type { IAudioContext } from "standardized-audio-context";
import type { InstrumentName } from "#core/signals/instruments.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import { only } from "./blend.ts";
import { arrival, type Course } from "./course.ts";
import { fadeOut } from "./fade.ts";
import type { Broken, MeasurerTrouble } from "./measurer.ts";
import { ofInstrument } from "./of-instrument.ts";
import type { OutputTrouble } from "./output.ts";
import { begin, follow, type PlayingGraph } from "./playing.ts";
import type { Programme } from "./programme.ts";
import type { Recorded, Recorder, RecordHow } from "./recorder.ts";
import type { Route } from "./route.ts";

/** Recorded before the signal, so that the noise is known; and after its end, so that what comes late is not cut off. */
export const [before, after]: readonly [Seconds, Seconds] = [0.3, 1];

export interface BoutHow extends Pick<RecordHow, "input" | "onOpen"> {
  readonly name: InstrumentName;
  /** Over and over until it is stopped; once, and kept, unless true. */
  readonly over: boolean;
  /** The recording ends after this time whatever became of the signal. */
  readonly longest: Seconds;
  readonly route: Route;
  /** The level, whenever it is asked for. */
  readonly course: () => Course;
  /** Some of what comes back, when since the beginning, and whether the signal had begun by then. */
  readonly onBlock: (channels: readonly Float32Array[], at: Seconds, begun: boolean) => void;
}

export type BoutEnded =
  | {
      readonly ended: "recorded";
      readonly recorded: Exclude<Recorded, { readonly recorded: "trouble" }>;
      readonly level: DecibelsFullScale;
    }
  | Broken;

type Opening = Promise<IAudioContext | OutputTrouble>;

/** One signal played into the thing under test, and what comes back recorded: from a press to its end. */
export class Bout {
  readonly #how: BoutHow;
  readonly #recorder: Recorder;
  readonly #resolve: (ended: BoutEnded) => void;
  readonly ended: Promise<BoutEnded>;
  #ready: { readonly context: IAudioContext; readonly programme: Programme } | undefined;
  #graph: PlayingGraph | undefined;
  #level: DecibelsFullScale = Number.NEGATIVE_INFINITY;
  /** The latest that was recorded, and that when the last sample was played; seconds since the first. */
  #at: Seconds = 0;
  #played: Seconds | undefined;
  #over = false;

  /** To be made in a press, with the output's context on the way. */
  constructor(how: BoutHow, opening: Opening, recorder: Recorder) {
    this.#how = how;
    this.#recorder = recorder;
    let resolve: (ended: BoutEnded) => void = () => {};
    this.ended = new Promise((told) => {
      resolve = told;
    });
    this.#resolve = resolve;
    const { input, longest, over, onOpen } = how;
    const recording = recorder.record({
      input,
      longest,
      keep: !over,
      onOpen,
      onBlock: (channels, at) => this.#take(channels, at),
    });
    recording.then((recorded) => this.#recorded(recorded)).catch(() => this.fail("lost"));
    this.#open(opening).catch(() => this.fail("lost"));
  }

  /** To silence within 20 ms, and the input closed. */
  stop(): void {
    this.#end({ ended: "stopped" });
  }

  /** Ends it for a reason. */
  fail(why: MeasurerTrouble): void {
    this.#end({ ended: "trouble", why });
  }

  /** Goes to the level as it is now, along its course; what is measured stays at one level. */
  step(): void {
    const { context } = this.#ready ?? {};
    if (this.#how.over && context && this.#graph)
      follow(this.#graph.level, this.#how.course(), context.currentTime);
  }

  async #open(opening: Opening): Promise<void> {
    const context = await opening;
    if (this.#over) return;
    if (typeof context === "string") {
      this.fail(context);
      return;
    }
    const programme = ofInstrument(this.#how.name, context.sampleRate, this.#how.over);
    if (programme === "refused") this.fail(programme);
    else this.#ready = { context, programme };
  }

  #take(channels: readonly Float32Array[], at: Seconds): void {
    if (this.#over) return;
    this.#at = at;
    this.#how.onBlock(channels, at, this.#graph !== undefined);
    // Whoever heard of it may have ended it.
    if (this.#over) return;
    if (this.#graph === undefined && at >= before) this.#begin();
    // The recorder hands over what there is, and this hears of it as of any other end.
    if (this.#played !== undefined && at >= this.#played + after) this.#recorder.stop();
  }

  #begin(): void {
    if (this.#ready === undefined) return;
    const { context, programme } = this.#ready;
    const course = this.#how.course();
    if (arrival(course) > context.currentTime) return;
    this.#level = course.to;
    const beginning = { course, blend: only("healthy"), balance: 0, first: this.#how.route.first };
    this.#graph = begin(context, programme, beginning, () => {
      this.#played = this.#at;
    });
  }

  #recorded(recorded: Recorded): void {
    if (recorded.recorded === "trouble") this.fail(recorded.why);
    else if (this.#how.over || recorded.granted === undefined) this.stop();
    else if (this.#played !== undefined)
      this.#end({ ended: "recorded", recorded, level: this.#level });
    else if (recorded.recorded === "stopped") this.stop();
    else this.fail("lost");
  }

  #end(ended: BoutEnded): void {
    if (this.#over) return;
    this.#over = true;
    const { context } = this.#ready ?? {};
    if (context && this.#graph && this.#played === undefined) fadeOut(context, this.#graph);
    this.#recorder.stop();
    this.#resolve(ended);
  }
}

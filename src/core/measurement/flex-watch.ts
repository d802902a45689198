import type { Hertz, Seconds } from "#core/units/units.ts";
import type { FlexBaseline } from "./flex-baseline.ts";
import type { FlexEarlier } from "./flex-events.ts";
import { FlexFront, type FlexHop, hop } from "./flex-front.ts";
import { FlexLearning } from "./flex-learning.ts";
import type { FlexMark } from "./flex-marks.ts";
import type { FlexChange, FlexEvent, FlexRefusal, FlexReturn, FlexStatus } from "./flex-names.ts";
import { FlexRun } from "./flex-run.ts";
import { FlexStrip } from "./flex-strip.ts";

export interface FlexSettings {
  readonly rate: Hertz;
  readonly channels: 1 | 2;
  readonly returns: FlexReturn;
  /** How much of the strip is kept at 10 ms a cell; a minute unless told otherwise. */
  readonly live?: Seconds;
}

/** All that is known so far. */
export interface FlexState {
  readonly status: FlexStatus;
  /** Since the first sample. */
  readonly now: Seconds;
  /** Oldest first; the last one may still go on. */
  readonly events: readonly FlexEvent[];
  /** Of events that gave way to later ones; 500 are kept. */
  readonly earlier?: FlexEarlier;
  readonly changes: readonly FlexChange[];
  /** Changes that gave way to later ones; 200 are kept. */
  readonly changesDropped: number;
  /** Deviations that no fault of a lead explains, as noise from elsewhere makes: how many, and how long together. */
  readonly disturbed: { readonly count: number; readonly seconds: Seconds };
  /** For how long nothing could be seen, by reason. */
  readonly blind: Readonly<Partial<Record<FlexRefusal, Seconds>>>;
  readonly marks: readonly FlexMark[];
  /** Marks that gave way to later ones; 1000 are kept. */
  readonly marksDropped: number;
}

const mostMarks = 1000;

/**
 * Watches a lead while it is bent: takes what comes back of the signal 'flex-tones', in blocks of any length, and tells every dropout, short and
 * crackle of two milliseconds or longer. It needs so much memory and no more, however long it runs.
 */
export class FlexWatch {
  readonly #settings: FlexSettings;
  readonly #front: FlexFront;
  readonly #strip: FlexStrip;
  #learning: FlexLearning;
  #refused: FlexRefusal | undefined;
  #run: FlexRun | undefined;
  #now: Seconds = 0;
  #marks: readonly FlexMark[] = [];
  #marksDropped = 0;

  /** @throws RangeError for other than one or two channels, or a rate outside 16 to 768 kHz */
  constructor(settings: FlexSettings) {
    this.#settings = settings;
    this.#front = new FlexFront(settings.rate, settings.channels, (at) => this.#take(at));
    this.#strip = new FlexStrip(settings.live ?? 60);
    this.#learning = new FlexLearning(settings.channels);
  }

  /**
   * Takes the next samples, one array a channel. Events are told 24 ms late.
   * @throws RangeError where channels are missing or differ in length
   */
  push(block: readonly Float32Array[]): void {
    this.#front.push(block);
  }

  /** The hand passes a plug: now, or at some time since the first sample. */
  mark(plug: FlexMark["plug"], at: Seconds = this.#now): void {
    const marks = [...this.#marks, { at, plug }];
    this.#marksDropped += Math.max(0, marks.length - mostMarks);
    this.#marks = marks.slice(-mostMarks);
  }

  /** The last seconds, and the whole run. */
  get strip(): Pick<FlexStrip, "live" | "whole"> {
    return this.#strip;
  }

  /** A value that stays as it is when more is pushed. */
  get state(): FlexState {
    const run = this.#run;
    const pending = run?.pending();
    return {
      status: run?.status ?? learningStatus(this.#refused),
      now: this.#now,
      events: [...(run?.events.past ?? []), ...(pending === undefined ? [] : [pending])],
      ...(run?.events.earlier === undefined ? {} : { earlier: run.events.earlier }),
      changes: [...(run?.slow.changes ?? [])],
      changesDropped: run?.slow.dropped ?? 0,
      disturbed: run?.disturbed ?? { count: 0, seconds: 0 },
      blind: run?.blind ?? {},
      marks: this.#marks,
      marksDropped: this.#marksDropped,
    };
  }

  #take(at: FlexHop): void {
    this.#now = at.hop * hop;
    if (this.#run !== undefined) this.#run.take(at);
    else this.#learn(this.#learning.take(at));
  }

  #learn(found: FlexBaseline | FlexRefusal | undefined): void {
    if (found === undefined) return;
    if (typeof found === "string") {
      this.#refused = found;
      this.#learning = new FlexLearning(this.#settings.channels);
      return;
    }
    this.#run = new FlexRun(found, this.#settings.returns, this.#strip);
  }
}

const learningStatus = (refused: FlexRefusal | undefined): FlexStatus =>
  refused === undefined ? { status: "learning" } : { status: "learning", refused };

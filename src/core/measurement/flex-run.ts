import type { Seconds } from "#core/units/units.ts";
import type { FlexBaseline } from "./flex-baseline.ts";
import type { FlexBreak } from "./flex-break.ts";
import { FlexEvents, shortest } from "./flex-events.ts";
import { type FlexHop, hop, noiseEvery } from "./flex-front.ts";
import { type FlexJudged, judged } from "./flex-judged.ts";
import type {
  FlexEvent,
  FlexFault,
  FlexLimit,
  FlexRefusal,
  FlexReturn,
  FlexStatus,
} from "./flex-names.ts";
import { FlexNoise } from "./flex-noise.ts";
import { FlexReading } from "./flex-reading.ts";
import { FlexRecords, place } from "./flex-record.ts";
import { FlexSegments } from "./flex-segments.ts";
import { nameable } from "./flex-shape.ts";
import { FlexSlow } from "./flex-slow.ts";
import type { FlexStrip } from "./flex-strip.ts";

/** A window is judged when so many later ones are known: 24 ms. */
const later = 48;
/** What is expected follows over two seconds. */
const following = hop / 2;
/** What stays off by less than 3 dB for so long is how things are now. */
const settled: Seconds = 3;
const shallow = 0.3;
/** Clipped samples in a second that are too many. */
const mostClipped = 10;
const second = Math.round(1 / hop);

/** Watching, once it is known how things are at first. */
export class FlexRun {
  readonly events = new FlexEvents();
  readonly slow: FlexSlow;
  readonly #limits: readonly FlexLimit[];
  readonly #faults: readonly FlexFault[];
  readonly #reading: FlexReading;
  readonly #noise: FlexNoise;
  readonly #records = new FlexRecords();
  readonly #segments = new FlexSegments(this.#records);
  readonly #strip: FlexStrip;
  #first: number | undefined;
  #resting = 0;
  #clipped = 0;
  #refused: FlexRefusal | undefined;
  #disturbed = { count: 0, seconds: 0 };
  #blind: Partial<Record<FlexRefusal, Seconds>> = {};

  constructor(baseline: FlexBaseline, returns: FlexReturn, strip: FlexStrip) {
    this.#limits = [...baseline.limits, ...(returns === "joined" ? (["sleeve"] as const) : [])];
    this.#faults = nameable(baseline.limits, returns);
    this.#reading = new FlexReading(baseline);
    this.#noise = new FlexNoise(baseline, this.#reading);
    this.slow = new FlexSlow(this.#reading);
    this.#strip = strip;
  }

  take(at: FlexHop): void {
    this.#first ??= at.hop;
    this.#reading.read(at.tones, this.#records, at.hop);
    if (at.hop % noiseEvery === 0) this.#noise.take(at.noise);
    this.#clipped += at.clipped;
    if (at.hop % second === 0) this.#eachSecond();
    const now = at.hop - later;
    // The first windows are before and beside nothing yet.
    if (now < this.#first + later / 2) return;
    this.#judge(now);
    this.#show(now);
  }

  get status(): FlexStatus {
    const limits = this.#limits;
    return this.#refused === undefined
      ? { status: "watching", limits }
      : { status: "blind", refused: this.#refused, limits };
  }
  get disturbed(): { readonly count: number; readonly seconds: Seconds } {
    return { ...this.#disturbed };
  }
  get blind(): Readonly<Partial<Record<FlexRefusal, Seconds>>> {
    return { ...this.#blind };
  }

  /** The event that is not done. */
  pending(): FlexEvent | undefined {
    const current = this.#segments.current;
    if (current === undefined || current.lasting < shortest) return this.events.pending();
    const what = this.#judged(current);
    return this.events.pending(
      what && { ...what, at: current.at, end: current.at + current.lasting },
    );
  }

  #judge(now: number): void {
    if (this.#noise.tooNoisy) this.#sightless("too noisy to see 2 ms");
    else if (this.#refused === "too noisy to see 2 ms") this.#refused = undefined;
    const deaf = this.#refused !== undefined || now < this.#resting;
    const ended = this.#segments.step(now, deaf ? Number.POSITIVE_INFINITY : this.#noise.threshold);
    if (ended !== undefined) this.#ended(...ended);
    if (this.#segments.current !== undefined) this.#adopt(this.#segments.current, now);
    else this.events.settle(now * hop);
    if (this.#segments.quiet) this.#quiet(now, deaf);
  }

  #ended(ended: FlexBreak, end: Seconds): void {
    const what = this.#judged(ended, end);
    if (what !== undefined) this.events.add({ ...what, at: ended.at, end });
    else if (end - ended.at >= shortest) this.#disturb(end - ended.at);
  }

  #judged(one: FlexBreak, end?: Seconds): FlexJudged | undefined {
    return judged(one.mean(end), this.#reading, this.#faults, this.#noise.variance);
  }

  /** What is a little off and stays so, or is off in a way that no fault explains, is no event: it is how things are now. */
  #adopt(current: FlexBreak, now: number): void {
    if (current.lasting < settled || now % noiseEvery !== 0) return;
    const strange = this.#judged(current) === undefined;
    if (current.size >= shallow && !strange) return;
    if (strange) this.#disturb(current.lasting);
    this.#reading.follow(current.lately, 0, 1);
    this.#segments.forget();
    this.#resting = now + later + 1;
    this.slow.look(this.#reading, current.at);
  }

  #disturb(seconds: Seconds): void {
    const before = this.#disturbed;
    this.#disturbed = { count: before.count + 1, seconds: before.seconds + seconds };
  }

  #quiet(now: number, deaf: boolean): void {
    this.#noise.quiet(this.#records, now);
    if (deaf) return;
    this.#reading.follow(this.#records.values, this.#records.row(now), following);
    if (now % second === 0) this.slow.look(this.#reading, now * hop);
  }

  #eachSecond(): void {
    if (this.#clipped > mostClipped) this.#refused = "clipped";
    else if (this.#refused === "clipped") this.#refused = undefined;
    this.#clipped = 0;
    if (this.#refused === "clipped") this.#sightless("clipped", 1);
  }

  #sightless(why: FlexRefusal, seconds: Seconds = hop): void {
    this.#refused = why;
    this.#blind = { ...this.#blind, [why]: (this.#blind[why] ?? 0) + seconds };
  }

  #show(now: number): void {
    const of = (which: number) => this.#records.at(now, which);
    const [left, right] = [of(place.signed), of(place.signed + 1)];
    this.#strip.add(
      now,
      of(place.level),
      of(place.level + 1),
      Math.abs(left) > Math.abs(right) ? left : right,
    );
  }
}

import type { Seconds } from "#core/units/units.ts";
import { hop } from "./flex-front.ts";
import { dimensions, type FlexRecords, place } from "./flex-record.ts";

/** A window is clear of an edge when its middle is so far from it: nearly its reach. */
const clear: Seconds = 0.00095;
/** Windows that wait until it is known that no edge follows. */
const wait = 4;
/** What lasts is averaged over so long. */
const lately = hop / 0.2;

/** The mean of what was measured during a break, clear of its edges. */
export interface FlexMean {
  /** As a row of `FlexRecords`. */
  readonly values: Float64Array;
  /** Windows in it. */
  readonly windows: number;
}

/** One time that something was off, while it lasts. Its edges are where it is half as far off as beside them. */
export class FlexBreak {
  readonly at: Seconds;
  readonly from: number;
  readonly threshold: number;
  readonly #records: FlexRecords;
  readonly #sums: Float64Array;
  /** The deviation lately, and how large it is. */
  readonly lately = new Float64Array(dimensions);
  #size = 0;
  #windows = 0;
  #last: number;

  constructor(records: FlexRecords, from: number, threshold: number) {
    this.#records = records;
    this.from = from;
    this.#last = from;
    this.threshold = threshold;
    this.at = startOf(records, from);
    this.#sums = new Float64Array(place.deviation + 1);
  }

  /** Takes the next window that belongs to it. */
  take(now: number): void {
    this.#last = now;
    const at = now - wait;
    if (at >= this.from && at * hop >= this.at + clear) {
      this.#add(at, this.#sums);
      this.#windows += 1;
    }
    const row = this.#records.row(now);
    for (let index = 0; index < dimensions; index += 1) {
      const value = this.#records.values[row + index] as number;
      this.lately[index] =
        (this.lately[index] as number) + lately * (value - (this.lately[index] as number));
    }
    this.#size += lately * (this.#records.deviation(now) - this.#size);
  }

  /** How far off lately, and for how long. */
  get size(): number {
    return this.#size;
  }
  get lasting(): Seconds {
    return this.#last * hop - this.at;
  }

  /** When it ends, should it end with this window; undefined while it goes on. */
  endsWith(now: number): Seconds | undefined {
    const off = this.#records.deviation(now);
    const half = this.#records.most(Math.max(this.from, now - nearby), now) / 2;
    if (off < half) return crossing(this.#records, now - 1, half);
    return off < 0.7 * this.threshold ? now * hop : undefined;
  }

  /** The mean so far, or up to an end; of what is too short for a clear window, its worst window. */
  mean(end: Seconds = this.#last * hop): FlexMean {
    const sums = this.#sums.slice();
    let windows = this.#windows;
    const first = Math.max(this.from, this.#last - wait + 1, Math.ceil((this.at + clear) / hop));
    for (let at = first; at * hop <= end - clear; at += 1, windows += 1) this.#add(at, sums);
    if (windows > 0) return { values: sums.map((sum) => sum / windows), windows };
    this.#add(this.#worst(), sums);
    return { values: sums, windows: 1 };
  }

  #add(at: number, sums: Float64Array): void {
    const row = this.#records.row(at);
    for (let index = 0; index < sums.length; index += 1)
      sums[index] = (sums[index] as number) + (this.#records.values[row + index] as number);
  }

  #worst(): number {
    let worst = this.from;
    for (let at = this.from; at <= this.#last; at += 1)
      if (this.#records.deviation(at) > this.#records.deviation(worst)) worst = at;
    return worst;
  }
}

/** Windows beside an edge: 6 ms, or 3 after a start. */
const nearby = 12;

/** Where it was first half as far off as it soon was. */
function startOf(records: FlexRecords, from: number): Seconds {
  let top = from;
  for (let at = from; at <= from + nearby / 2; at += 1) {
    if (records.deviation(at) < records.deviation(top) / 2) break;
    if (records.deviation(at) > records.deviation(top)) top = at;
  }
  const half = records.deviation(top) / 2;
  let before = top - 1;
  while (before > from - nearby / 2 && records.deviation(before) >= half) before -= 1;
  return crossing(records, before, half);
}

/** The time between a window and the next at which the deviation passes a height. */
function crossing(records: FlexRecords, before: number, height: number): Seconds {
  const [one, other] = [records.deviation(before), records.deviation(before + 1)];
  const share = one === other ? 0 : (height - one) / (other - one);
  return (before + Math.min(1, Math.max(0, share))) * hop;
}

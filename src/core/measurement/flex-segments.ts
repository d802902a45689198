import type { Seconds } from "#core/units/units.ts";
import { FlexBreak } from "./flex-break.ts";
import type { FlexRecords } from "./flex-record.ts";

/** After a break what remains off must rise again, or stay for so many windows, to be the next one: 3 ms. */
const settling = 6;

/** Finds where breaks begin and end, window by window. */
export class FlexSegments {
  readonly #records: FlexRecords;
  #current: FlexBreak | undefined;
  /** After a break, until all is well: where it ended, and how far off it was. */
  #after: { readonly hop: number; readonly most: number } | undefined;

  constructor(records: FlexRecords) {
    this.#records = records;
  }

  /** The break that lasts. */
  get current(): FlexBreak | undefined {
    return this.#current;
  }

  /** Nothing happens. */
  get quiet(): boolean {
    return this.#current === undefined && this.#after === undefined;
  }

  /** What lasted is the usual state from now on. */
  forget(): void {
    this.#current = undefined;
    this.#after = undefined;
  }

  /** Takes a window; returns a break that ends with it, and when it ended. At an infinite threshold none begins. */
  step(now: number, threshold: number): readonly [FlexBreak, Seconds] | undefined {
    if (this.#current === undefined) {
      this.#look(now, threshold);
      return undefined;
    }
    const ended = this.#current;
    const end = ended.endsWith(now);
    if (end === undefined) {
      ended.take(now);
      return undefined;
    }
    this.#current = undefined;
    this.#after = { hop: now, most: this.#records.most(Math.max(ended.from, now - 12), now) };
    return [ended, end];
  }

  #look(now: number, threshold: number): void {
    const off = this.#records.deviation(now);
    if (off <= threshold) {
      this.#after = undefined;
      return;
    }
    const after = this.#after;
    if (after !== undefined && off <= after.most / 2 && now - after.hop <= settling) return;
    this.#after = undefined;
    this.#current = new FlexBreak(this.#records, now, threshold);
    this.#current.take(now);
  }
}

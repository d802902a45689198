import type { Seconds } from "#core/units/units.ts";
import { hop } from "./flex-front.ts";

/** Windows in a cell of the strip. */
const inCell = 20;
/** 10 ms. */
const cell: Seconds = inCell * hop;
/** Least and greatest of three levels. */
const numbers = 6;
/** Cells of the whole run. */
const coarseCells = 2048;

/** Levels over time, one number a cell; NaN where nothing was watched. One is healthy; crosstalk is signed, below zero in antiphase. */
export interface FlexStripView {
  readonly from: Seconds;
  /** The length of a cell. */
  readonly step: Seconds;
  readonly left: Band;
  readonly right: Band;
  readonly crosstalk: Band;
}

interface Band {
  readonly least: Float32Array;
  readonly most: Float32Array;
}

/** The last seconds by 10 ms, and the whole run by as much as its length makes of 2048 cells or fewer. Both stay as large as they begin. */
export class FlexStrip {
  readonly #fine: Float32Array;
  readonly #cells: number;
  /** The number of the cell that is being filled, and what it has. */
  #now = 0;
  readonly #filling = emptyCell();
  readonly #coarse = new Float32Array(numbers * coarseCells).fill(Number.NaN);
  /** Fine cells in a coarse one. */
  #wide = 1;

  constructor(seconds: Seconds) {
    this.#cells = Math.max(1, Math.ceil(seconds / cell));
    this.#fine = new Float32Array(numbers * this.#cells).fill(Number.NaN);
  }

  /** Takes a window. */
  add(at: number, left: number, right: number, crosstalk: number): void {
    const number = Math.floor(at / inCell);
    if (number !== this.#now) this.#finish(number);
    widen(this.#filling, 0, left);
    widen(this.#filling, 2, right);
    widen(this.#filling, 4, crosstalk);
  }

  #finish(next: number): void {
    this.#fine.set(this.#filling, numbers * (this.#now % this.#cells));
    this.#keep();
    const skipped = Math.min(next, this.#now + 1 + this.#cells);
    for (let at = this.#now + 1; at < skipped; at += 1)
      this.#fine.fill(Number.NaN, numbers * (at % this.#cells), numbers * ((at % this.#cells) + 1));
    this.#now = next;
    this.#filling.fill(Number.NaN);
  }

  #keep(): void {
    while (this.#now >= coarseCells * this.#wide) this.#halve();
    const at = numbers * Math.floor(this.#now / this.#wide);
    merge(this.#coarse, at, this.#filling, 0);
  }

  /** Two cells become one. */
  #halve(): void {
    const all = this.#coarse;
    for (let at = 0; at < coarseCells; at += 1) {
      const pair = all.slice(2 * numbers * at, 2 * numbers * (at + 1));
      all.fill(Number.NaN, numbers * at, numbers * (at + 1));
      for (let from = 0; from < pair.length; from += numbers) merge(all, numbers * at, pair, from);
    }
    this.#wide *= 2;
  }

  /** The last seconds, up to what is being filled. */
  live(): FlexStripView {
    const count = Math.min(this.#now, this.#cells);
    const first = this.#now - count;
    return view(
      count,
      first * cell,
      cell,
      (at, number) => this.#fine[numbers * ((first + at) % this.#cells) + number],
    );
  }

  /** The whole run. */
  whole(): FlexStripView {
    const count = Math.ceil(this.#now / this.#wide);
    return view(count, 0, this.#wide * cell, (at, number) => this.#coarse[numbers * at + number]);
  }
}

const emptyCell = () => new Float32Array(numbers).fill(Number.NaN);

/** Least and greatest of what is there, where NaN is nothing. */
function widen(into: Float32Array, at: number, value: number): void {
  const [least, most] = [into[at] as number, into[at + 1] as number];
  if (!(value >= least)) into[at] = Number.isNaN(value) ? least : value;
  if (!(value <= most)) into[at + 1] = Number.isNaN(value) ? most : value;
}

function merge(into: Float32Array, at: number, from: Float32Array, start: number): void {
  for (let number = 0; number < numbers; number += 2) {
    widen(into, at + number, from[start + number] as number);
    widen(into, at + number, from[start + number + 1] as number);
  }
}

function view(
  count: number,
  from: Seconds,
  step: Seconds,
  value: (at: number, number: number) => number | undefined,
): FlexStripView {
  const column = (number: number) =>
    Float32Array.from({ length: count }, (_, at) => value(at, number) ?? Number.NaN);
  const band = (number: number): Band => ({ least: column(number), most: column(number + 1) });
  return { from, step, left: band(0), right: band(2), crosstalk: band(4) };
}

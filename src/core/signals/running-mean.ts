/** The mean of the last so many values given to it; before the first, zeros. */
export class RunningMean {
  readonly #width: number;
  readonly #last: Float64Array;
  #at = 0;
  #total = 0;

  /** @param most so many values are given at most, so that a width beyond all reason needs no memory */
  constructor(width: number, most: number) {
    this.#width = Math.max(1, width);
    this.#last = new Float64Array(Math.max(1, Math.min(width, most)));
  }

  /** Takes a value and returns the mean with it. */
  push(value: number): number {
    this.#total += value - (this.#last[this.#at] ?? 0);
    this.#last[this.#at] = value;
    this.#at = this.#at + 1 === this.#last.length ? 0 : this.#at + 1;
    return this.#total / this.#width;
  }
}

/** A disk that takes longer than this is not waited for any more; ms. */
const patience = 1000;

/** What is done at the disk, one after the other, and whether the page waits for it. */
export class InOrder {
  #doing: Promise<void> = Promise.resolve();
  #awaited = 0;
  #late = false;

  /** Something is about to be on the disk that the page shows only then. */
  get waits(): boolean {
    return this.#awaited > 0 && !this.#late;
  }

  /** A mistake in one of them keeps none from being done. */
  soon(work: () => Promise<unknown>): void {
    this.#doing = this.#doing.then(work).then(
      () => undefined,
      (error: unknown) => reportError(error),
    );
  }

  /** The page waits for it, but not for long: where the disk is late it is not waited for until all is done. */
  awaited(work: () => Promise<void>, done: () => void, onLate: () => void): void {
    this.#awaited += 1;
    const late = setTimeout(() => {
      this.#late = true;
      onLate();
    }, patience);
    this.soon(async () => {
      try {
        await work();
      } finally {
        clearTimeout(late);
        this.#awaited -= 1;
        if (this.#awaited === 0) this.#late = false;
        done();
      }
    });
  }
}

/**
 * Work in small pieces: what is yielded is how much is done, 0 to 1, the last of them 1; what is returned is the result.
 * A piece takes a few milliseconds, so whoever runs it can draw between pieces; to stop, stop asking.
 */
export type Work<T> = Generator<number, T, void>;

/** A work that is one stretch of another: what it says is done is told on the way `from` one share `to` the next. */
export function* part<T>(work: Work<T>, from: number, to: number): Work<T> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield from + step.value * (to - from);
  }
}

/** The result of a work done in one go, for who need not draw meanwhile. */
export function finish<T>(work: Work<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

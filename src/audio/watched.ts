/** A value that others watch: another value whenever a part of it changes. Every member may be handed on by itself. */
export class Watched<T extends object> {
  #now: T;
  readonly #listeners = new Set<() => void>();

  constructor(first: T) {
    this.#now = first;
  }

  readonly now = (): T => this.#now;

  /** The value with this part changed, and all who watch are told. */
  readonly change = (part: Partial<T>): void => {
    this.#now = { ...this.#now, ...part };
    for (const listener of this.#listeners) listener();
  };

  /** Calls back after every change; returns how to stop that. */
  readonly subscribe = (listener: () => void) => {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  };
}

/** A value that others watch: another value whenever a part of it changes. Every member may be handed on by itself. */
export class Watched<T extends object> {
  #now: T;
  readonly #listeners = new Set<() => void>();

  constructor(first: T) {
    this.#now = first;
  }

  readonly now = (): T => this.#now;

  /** The value with this part changed, and all who watch are told; where it is so already, nobody is. */
  readonly change = (part: Partial<T>): void => {
    const keys = Object.keys(part) as (keyof T)[];
    if (keys.every((key) => Object.is(this.#now[key], part[key]))) return;
    this.#now = { ...this.#now, ...part };
    for (const listener of this.#listeners) listener();
  };

  /** Calls back after every change; returns how to stop that. */
  readonly subscribe = (listener: () => void) => {
    this.#listeners.add(listener);
    return () => void this.#listeners.delete(listener);
  };
}

import type { Log } from "#core/session/log.ts";
import type { Trouble } from "#storage/shelf.ts";
import type { Arrived, Store } from "#storage/store.ts";
import type { View } from "./page.ts";

/** A session that the page holds or held, and how much of it is on the disk. */
export interface Written {
  readonly session: string;
  /** The number of a bench rig; undefined for real gear. */
  readonly seed: number | undefined;
  log: Log;
  /** How many entries are on the disk. */
  kept: number;
  /** The place of the next there. */
  next: number;
  /** What was shown when the first entry was made that is not there yet. */
  from: View;
}

/** Takes in what another tab wrote behind what is on the disk; says whether that was something. */
export async function readOn(store: Pick<Store, "more">, one: Written): Promise<boolean> {
  const { session, log, next } = one;
  if (one.kept < log.length) return false;
  const told = await store.more(session, next, log);
  if ("trouble" in told || told.value.next <= next || one.log !== log) return false;
  takeIn(one, log, told.value);
  return true;
}

function takeIn(one: Written, known: Log, { log, next }: Arrived): void {
  one.log = [...known, ...log];
  one.kept = one.log.length;
  one.next = next;
}

/**
 * The sessions that have entries which are not on the disk, in hand or not: each write tries them all again, and none is let go before
 * all of it is there.
 */
export class Unwritten {
  readonly #store: Pick<Store, "keep" | "more">;
  readonly #now: () => number;
  /** Told at once when a session has become what another tab wrote. */
  readonly #gaveWay: (one: Written) => void;
  readonly #all = new Set<Written>();

  constructor(
    store: Pick<Store, "keep" | "more">,
    now: () => number,
    gaveWay: (one: Written) => void,
  ) {
    this.#store = store;
    this.#now = now;
    this.#gaveWay = gaveWay;
  }

  /** Whether everything is on the disk. */
  get isEmpty(): boolean {
    return this.#all.size === 0;
  }

  /** The session of a name, where something of it is not on the disk. */
  of(session: string | undefined): Written | undefined {
    return [...this.#all].find((one) => one.session === session);
  }

  /** The session goes on with a longer log, made on a screen. */
  add(one: Written, log: Log, from: View): void {
    if (one.kept === one.log.length) one.from = from;
    one.log = log;
    this.#all.add(one);
  }

  /** Nothing more of it is to be written. */
  drop(one: Written): void {
    this.#all.delete(one);
  }

  /** What is not on the disk goes there, or gives way where that session is not mine. What was in the way, where something was. */
  settle(one: Written, mine: boolean): Promise<readonly Trouble[]> {
    return mine ? this.#writeAll(one) : this.#giveUp(one);
  }

  /** Writes one, then what is left of the others. */
  async #writeAll(first: Written): Promise<readonly Trouble[]> {
    const troubles: Trouble[] = [];
    for (const one of new Set([first, ...this.#all])) {
      const trouble = await this.#write(one);
      if (trouble !== undefined) troubles.push(trouble);
    }
    return troubles;
  }

  /** Another tab writes that session: what is not on the disk is not written. */
  async #giveUp(one: Written): Promise<readonly Trouble[]> {
    return this.#all.has(one) ? [await this.#giveWay(one)] : [];
  }

  async #write(one: Written): Promise<Trouble | undefined> {
    if (!this.#all.has(one)) return undefined;
    const { session, seed, log, kept, next } = one;
    const entries = log.slice(kept);
    const adding = { session, place: next, entries, whole: log, seed, at: this.#now() };
    const told = await this.#store.keep(adding);
    if ("trouble" in told) return told.trouble === "taken" ? this.#giveWay(one) : told.trouble;
    one.kept = log.length;
    one.next = told.value;
    if (one.log.length === one.kept) this.#all.delete(one);
    return undefined;
  }

  /** Another tab wrote there: what it wrote holds, and what was not written is to be pressed again. Until that was read it stays. */
  async #giveWay(one: Written): Promise<Trouble> {
    const known = one.log.slice(0, one.kept);
    const told = await this.#store.more(one.session, one.next, known);
    if ("trouble" in told) return told.trouble;
    if (told.value.next > one.next) return this.#becomes(one, known, told.value);
    // It was cleared away and written anew, and is shorter now.
    const whole = await this.#store.more(one.session, 0, []);
    return "trouble" in whole ? whole.trouble : this.#becomes(one, [], whole.value);
  }

  #becomes(one: Written, known: Log, more: Arrived): Trouble {
    takeIn(one, known, more);
    this.#all.delete(one);
    this.#gaveWay(one);
    return "taken";
  }
}

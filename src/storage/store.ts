import type { Log } from "#core/session/log.ts";
import { isDrawn, mendedLog } from "#core/session/mended.ts";
import { type Older, readOlder, takeOver } from "./older.ts";
import type { Adding, Card, Shelf, Told, Trouble } from "./shelf.ts";
import type { Turns } from "./turns.ts";

/** A session as it is kept. */
export interface Kept {
  readonly session: string;
  readonly log: Log;
  /** The number of a bench rig; left out for real gear. */
  readonly seed?: number;
  /** The position that was in hand. */
  readonly position?: string;
  /** The place of the next entry. */
  readonly next: number;
}

/** What was found on reading: a session, how much could not be understood, and what was in the way. */
export interface Reading {
  readonly kept?: Kept;
  /** How many entries were left out. */
  readonly unread: number;
  readonly trouble?: Trouble;
}

/** Entries that came from another tab. */
export interface Arrived {
  readonly log: Log;
  readonly next: number;
}

/** A session in the list, and when it was deleted, where it was. */
export interface Listed extends Kept {
  readonly deleted?: number;
}

/** A session without a rig that can be understood: its entries as they lie there. */
export interface Unread {
  readonly session: string;
  readonly entries: readonly unknown[];
  readonly deleted?: number;
}

/** All sessions that are kept. */
export interface Listing {
  /** The newest first. */
  readonly sessions: readonly Listed[];
  readonly unread: readonly Unread[];
}

/** Where sessions are kept, and which of several tabs writes them. No member ever throws. */
export interface Store extends Turns {
  /** The session that was in hand last; of an older program, where that kept one. */
  readonly last: () => Promise<Reading>;
  /** What stands behind the entries that are known. */
  readonly more: (session: string, place: number, known: Log) => Promise<Told<Arrived>>;
  /** A name for a new session, unlike all others. */
  readonly name: () => string;
  readonly list: () => Promise<Told<Listing>>;
  /** Writes entries; told when they are on the disk, with the place of the next. */
  readonly keep: (adding: Adding) => Promise<Told<number>>;
  readonly mark: (session: string, marks: (card: Card) => Card) => Promise<Told<undefined>>;
  /** Asks the browser not to clear away what is kept here, when it needs room. */
  readonly persist: () => void;
}

/** For so long what was deleted can be brought back; ms. */
const aDay = 24 * 60 * 60 * 1000;

/** What a store stands on. */
interface Ground {
  readonly shelf: Shelf;
  readonly turns: Turns;
  /** Where an older program kept its one session. It may throw, as it does where storage is forbidden. */
  readonly older: () => Storage;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly name: () => string;
  readonly persist?: () => Promise<boolean>;
}

/** Sessions on a shelf. */
export function createStore({ shelf, turns, older, now, name, persist }: Ground): Store {
  return {
    ...turns,
    name,
    last: async () => {
      const found = readOlder(older);
      if (found !== undefined) return tookOver(found, await takeOver(older, shelf, found, now()));
      const cards = await shelf.cards();
      if ("trouble" in cards) return { unread: 0, trouble: cards.trouble };
      const [newest] = cards.value.filter(isInHand).sort((a, b) => b.opened - a.opened);
      return newest === undefined ? { unread: 0 } : goneOn(shelf, newest);
    },
    more: async (session, place, known) => {
      const told = await shelf.read(session, place);
      if ("trouble" in told) return told;
      const { entries, next } = told.value;
      return { value: { log: mendedLog(entries, known).log, next } };
    },
    list: async () => {
      await shelf.clear(now() - aDay);
      const cards = await shelf.cards();
      if ("trouble" in cards) return cards;
      return listing(await Promise.all(cards.value.map((card) => lain(shelf, card))));
    },
    keep: async (adding) => {
      const told = await shelf.add(adding);
      if ("value" in told) turns.tell(adding.session);
      return told;
    },
    mark: shelf.mark,
    persist: () => void persist?.().catch(() => false),
  };
}

const isInHand = ({ opened, deleted }: Card): boolean => opened > 0 && deleted === undefined;

/** Where it could not be laid on the shelf, it is gone on with all the same, and kept with its next entry. */
const tookOver = ({ session, log, seed, unread }: Older, lies: boolean): Reading => ({
  unread,
  ...(log.length === 0
    ? {}
    : {
        kept: {
          session,
          log,
          next: lies ? log.length : 0,
          ...(seed === undefined ? {} : { seed }),
        },
      }),
});

/** A session as far as it can be understood, and how many entries cannot. */
interface Lain {
  readonly one: Listed | Unread;
  readonly lost: number;
}

async function lain(shelf: Shelf, card: Card): Promise<Told<Lain>> {
  const { session, position, deleted } = card;
  const [told, seed] = await Promise.all([shelf.read(session, 0), shelf.seed(session)]);
  if ("trouble" in told) return told;
  const { entries, next } = told.value;
  const { log, lost } = mendedLog(entries);
  const gone = deleted === undefined ? {} : { deleted };
  if (!isDrawn(log)) return { value: { one: { session, entries, ...gone }, lost: lost.length } };
  const one: Listed = {
    session,
    log,
    next,
    ...("value" in seed && seed.value !== undefined ? { seed: seed.value } : {}),
    ...(position === undefined ? {} : { position }),
    ...gone,
  };
  return { value: { one, lost: lost.length } };
}

/** The session that was in hand last. One that cannot be understood stays in the list, and is not gone on with by itself. */
async function goneOn(shelf: Shelf, card: Card): Promise<Reading> {
  const told = await lain(shelf, card);
  if ("trouble" in told) return { unread: 0, trouble: told.trouble };
  const { one, lost } = told.value;
  if ("log" in one) return { kept: one, unread: lost };
  await shelf.mark(card.session, (before) => ({ ...before, opened: 0 }));
  return { unread: Math.max(1, lost) };
}

/** A list in which one is missing would say that it is gone; so there is none, where one could not be read. */
function listing(all: readonly Told<Lain>[]): Told<Listing> {
  const sessions: Listed[] = [];
  const unread: Unread[] = [];
  for (const told of all) {
    if ("trouble" in told) return told;
    const { one } = told.value;
    if ("log" in one) sessions.push(one);
    else if (one.entries.length > 0) unread.push(one);
  }
  const begun = ({ log }: Listed) => log[0]?.at ?? 0;
  return { value: { sessions: sessions.sort((a, b) => begun(b) - begun(a)), unread } };
}

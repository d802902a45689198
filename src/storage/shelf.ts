import type { Entry } from "#core/session/log.ts";

/** Why something could not be kept or read; each has its words in the ui. */
const troubles = ["forbidden", "full", "blocked", "newer", "taken", "failed"] as const;
export type Trouble = (typeof troubles)[number];

/** What was asked for, or why there is none. */
export type Told<Value> = { readonly value: Value } | { readonly trouble: Trouble };

/** What is written of a session besides its entries. It may be rewritten, and no finding stands in it. */
export interface Card {
  readonly session: string;
  /** When it was in hand last, ms since 1970; zero for one that is not to be gone on with by itself. */
  readonly opened: number;
  /** The position in hand; left out at the board. */
  readonly position?: string;
  /** When it was deleted; until it is cleared away it can be brought back. */
  readonly deleted?: number;
}

/** Entries as they lie there; nobody has looked yet whether they can be understood. */
export interface Lying {
  readonly entries: readonly unknown[];
  /** The place of the next entry. */
  readonly next: number;
}

/** Entries to be written after what is there. */
export interface Adding {
  readonly session: string;
  /** Where the first of them belongs: the place after the last that the writer knows of. */
  readonly place: number;
  readonly entries: readonly Entry[];
  /** The whole log: where nothing is there any more, all of it is written. */
  readonly whole: readonly Entry[];
  /** The number of a bench rig, which never stands in the log. */
  readonly seed?: number | undefined;
  /** Now, ms since 1970. */
  readonly at: number;
  /** It is not gone on with by itself, as what came from a file. */
  readonly aside?: boolean;
}

/** Where sessions lie, one record an entry. No member ever throws, and none rewrites an entry. */
export interface Shelf {
  readonly cards: () => Promise<Told<readonly Card[]>>;
  /** The entries of a session from a place on. */
  readonly read: (session: string, place: number) => Promise<Told<Lying>>;
  readonly seed: (session: string) => Promise<Told<number | undefined>>;
  /**
   * All of them or none, on the disk when it is told; the place of the next. 'taken' where somebody else wrote there. What was deleted
   * meanwhile is deleted no more: somebody goes on with it.
   */
  readonly add: (adding: Adding) => Promise<Told<number>>;
  /** Rewrites a card that is there. */
  readonly mark: (session: string, marks: (card: Card) => Card) => Promise<Told<undefined>>;
  /** Takes away what was deleted before a time, for good. */
  readonly clear: (before: number) => Promise<Told<undefined>>;
}

/** The card of a session once something was written to it; `card` as it was, where there was one. */
export function cardOf({ session, at, aside = false }: Adding, card: Card | undefined): Card {
  if (card === undefined) return { session, opened: aside ? 0 : at };
  const { deleted: _, ...rest } = card;
  return rest;
}

/** Where entries are written: after what is there, or all of them where nothing is; 'taken' where there is more than was known. */
export function placing({ place, entries, whole }: Adding, next: number) {
  if (next === place) return { place, entries };
  return next === 0 ? { place: 0, entries: whole } : undefined;
}

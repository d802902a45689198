import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from "idb";
import type { Entry } from "#core/session/log.ts";
import {
  type Adding,
  type Card,
  cardOf,
  type Lying,
  placing,
  type Shelf,
  type Told,
  type Trouble,
} from "./shelf.ts";

/** One record an entry, under its session and its place there. The bench's number is apart from the log, and never in it. */
interface Kept extends DBSchema {
  entries: { key: [session: string, place: number]; value: Entry };
  cards: { key: string; value: Card };
  seeds: { key: string; value: number };
}

type Stores = ("entries" | "cards" | "seeds")[];
type Opening = Promise<IDBPDatabase<Kept>>;
type Work<Value> = (database: IDBPDatabase<Kept>) => Promise<Value>;
type Writing = IDBPTransaction<Kept, Stores, "readwrite">;

const version = 1;

/** Told when it is on the disk, not when the system has promised to write it: a tablet may run out of its battery. */
const strict = { durability: "strict" } as const;

/** Where the browser's own database keeps sessions. Whatever it refuses is told by name. */
export function createDatabase(name = "leftwright"): Shelf {
  let opened: Opening | undefined;
  const open = (): Opening => {
    opened ??= opening(name, () => {
      opened = undefined;
    });
    return opened;
  };
  const told = async <Value>(work: Work<Value>): Promise<Told<Value>> => {
    try {
      const opening = open();
      const first = opening.then(work);
      return { value: await first.catch((error) => again(opening, error, work)) };
    } catch (error) {
      return { trouble: troubleOf(error) };
    }
  };
  /** A database that went away, as when somebody clears what the browser holds, is opened once more, whatever the browser calls that. */
  const again = async <Value>(broken: Opening, error: unknown, work: Work<Value>) => {
    if (isTold(error)) throw error;
    if (opened === broken) opened = undefined;
    (await broken).close();
    return work(await open());
  };
  return {
    cards: () => told((database) => database.getAll("cards")),
    seed: (session) => told((database) => database.get("seeds", session)),
    read: (session, place) => told((database) => reading(database, session, place)),
    add: (adding) =>
      told((database) =>
        within(database.transaction(["entries", "cards", "seeds"], "readwrite", strict), (at) =>
          added(at, adding),
        ),
      ),
    mark: (session, marks) => told((database) => marked(database, session, marks)),
    clear: (before) =>
      told((database) =>
        within(database.transaction(["entries", "cards", "seeds"], "readwrite"), (at) =>
          cleared(at, before),
        ),
      ),
  };
}

async function opening(name: string, onGone: () => void): Opening {
  if (!("indexedDB" in globalThis)) throw new DOMException("there is none", "SecurityError");
  try {
    return await new Promise<IDBPDatabase<Kept>>((resolve, reject) => {
      openDB<Kept>(name, version, {
        upgrade: (database) => {
          for (const store of ["entries", "cards", "seeds"] as const)
            if (!database.objectStoreNames.contains(store)) database.createObjectStore(store);
        },
        blocked: () => reject(new DOMException("another tab is older", "Blocked")),
        // A newer program in another tab waits for this one to let go.
        blocking: (_current, _wanted, event) => {
          (event.target as IDBDatabase).close();
          onGone();
        },
        terminated: onGone,
      }).then(resolve, reject);
    });
  } catch (error) {
    onGone();
    throw error;
  }
}

/** All of what is done in a transaction, or none of it. */
async function within<Value>(
  transaction: Writing,
  work: (transaction: Writing) => Promise<Value>,
): Promise<Value> {
  try {
    const value = await work(transaction);
    await transaction.done;
    return value;
  } catch (error) {
    transaction.done.catch(() => undefined);
    if (isOpen(transaction)) transaction.abort();
    throw transaction.error ?? error;
  }
}

function isOpen(transaction: Writing): boolean {
  try {
    transaction.objectStore("cards");
    return true;
  } catch {
    return false;
  }
}

const all = (session: string, from = 0) => IDBKeyRange.bound([session, from], [session, Infinity]);

async function reading(
  database: IDBPDatabase<Kept>,
  session: string,
  place: number,
): Promise<Lying> {
  const transaction = database.transaction("entries");
  const [entries, keys] = await Promise.all([
    transaction.store.getAll(all(session, place)),
    transaction.store.getAllKeys(all(session, place)),
  ]);
  const last = keys.at(-1);
  return { entries, next: last === undefined ? place : last[1] + 1 };
}

async function added(transaction: Writing, adding: Adding): Promise<number> {
  const { session, seed } = adding;
  const [entries, cards] = [transaction.objectStore("entries"), transaction.objectStore("cards")];
  const [last, card] = await Promise.all([
    entries.openKeyCursor(all(session), "prev"),
    cards.get(session),
  ]);
  const placed = placing(adding, last === null ? 0 : last.key[1] + 1);
  if (placed === undefined) throw new DOMException("another tab wrote there", "ConstraintError");
  const writing: Promise<unknown>[] = placed.entries.map(async (entry, index) =>
    entries.add(entry, [session, placed.place + index]),
  );
  if (card === undefined || card.deleted !== undefined)
    writing.push(cards.put(cardOf(adding, card), session));
  if (placed.place === 0 && seed !== undefined)
    writing.push(transaction.objectStore("seeds").put(seed, session));
  await Promise.all(writing);
  transaction.commit();
  return placed.place + placed.entries.length;
}

async function marked(
  database: IDBPDatabase<Kept>,
  session: string,
  marks: (card: Card) => Card,
): Promise<undefined> {
  const transaction = database.transaction("cards", "readwrite");
  const card = await transaction.store.get(session);
  if (card !== undefined) await transaction.store.put(marks(card), session);
  await transaction.done;
}

async function cleared(transaction: Writing, before: number): Promise<undefined> {
  const cards = await transaction.objectStore("cards").getAll();
  for (const { session, deleted } of cards) {
    if (deleted === undefined || deleted >= before) continue;
    await transaction.objectStore("entries").delete(all(session));
    await transaction.objectStore("seeds").delete(session);
    await transaction.objectStore("cards").delete(session);
  }
}

const nameOf = (error: unknown): string =>
  error instanceof DOMException || error instanceof Error ? error.name : "";

const named: Readonly<Record<string, Trouble>> = {
  SecurityError: "forbidden",
  InvalidStateError: "forbidden",
  NotAllowedError: "forbidden",
  QuotaExceededError: "full",
  Blocked: "blocked",
  VersionError: "newer",
  ConstraintError: "taken",
};

/** Whether it says what is in the way, so that another try would say the same. */
const isTold = (error: unknown): boolean =>
  nameOf(error) !== "InvalidStateError" && named[nameOf(error)] !== undefined;

const troubleOf = (error: unknown): Trouble => named[nameOf(error)] ?? "failed";

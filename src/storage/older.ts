import type { Log } from "#core/session/log.ts";
import { isDrawn, mendedLog } from "#core/session/mended.ts";
import type { Shelf } from "./shelf.ts";

/** Where the program kept its one session before there was a database. */
const logKey = "leftwright.log";
const seedKey = "leftwright.bench";
/** What could not be understood is put away, not thrown away. */
const unreadKey = "leftwright.unread";

/** A session that an older program kept. */
export interface Older {
  readonly session: string;
  readonly log: Log;
  readonly seed?: number;
  /** How many entries could not be understood. */
  readonly unread: number;
}

/** What an older program kept, where it did. `open` may throw, as it does where storage is forbidden. */
export function readOlder(open: () => Storage): Older | undefined {
  try {
    const text = open().getItem(logKey);
    return text === null ? undefined : understood(text, open().getItem(seedKey) ?? "");
  } catch {
    return undefined;
  }
}

function understood(text: string, numbers: string): Older {
  const { log, lost } = mendedLog(listIn(text));
  const begun = log[0]?.at ?? 0;
  const session = `older ${begun}`;
  const [seed, at] = numbers.split(" ").map(Number);
  // A number belongs to its own session: a disk that was full in between may hold the log of another one.
  const known = Number.isSafeInteger(seed) && at === begun && seed !== undefined;
  const unread = isDrawn(log) ? lost.length : Math.max(1, lost.length);
  return { session, log: isDrawn(log) ? log : [], ...(known ? { seed } : {}), unread };
}

function listIn(text: string): readonly unknown[] {
  try {
    const data: unknown = JSON.parse(text);
    return Array.isArray(data) ? data : [];
  } catch {
    return [];
  }
}

/**
 * Takes it over, once: it goes away there only when it lies on the shelf, under an id that it has every time. Says whether it does.
 */
export async function takeOver(
  open: () => Storage,
  shelf: Shelf,
  { session, log, seed, unread }: Older,
  at: number,
): Promise<boolean> {
  if (log.length > 0) {
    const adding = { session, place: 0, entries: log, whole: log, seed, at };
    const told = await shelf.add(adding);
    if ("trouble" in told && told.trouble !== "taken") return false;
  }
  try {
    const storage = open();
    const text = storage.getItem(logKey);
    if (unread > 0 && text !== null) storage.setItem(unreadKey, text);
    storage.removeItem(logKey);
    storage.removeItem(seedKey);
  } catch {
    // It is taken over again the next time, and found to be there.
  }
  return true;
}

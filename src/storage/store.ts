import type { Log } from "#core/session/log.ts";
import { readLog } from "./reading.ts";

/** What is kept between visits: the log, and apart from it the number of a bench rig. */
interface Kept {
  readonly log: Log;
  /** Left out for real gear. */
  readonly seed?: number | undefined;
}

/** What was found on reading. `dropped`: something was there and could not be understood. */
export interface Reading {
  readonly kept: Kept | undefined;
  readonly dropped: boolean;
}

/** The browser's storage, as this program uses it. No member ever throws. */
export interface Store {
  readonly read: () => Reading;
  /** Whether it was kept: not in a private window that forbids it, nor on a full disk. */
  readonly keep: (kept: Kept) => boolean;
}

const logKey = "leftwright.log";
/** The hidden fault never stands in the log, so that a log can be shown to anybody. */
const seedKey = "leftwright.bench";

/** A store on the browser's own. `open` may throw, as it does where storage is forbidden. */
export const createStore = (open: () => Storage): Store => ({
  read: () => {
    try {
      return readFrom(open());
    } catch {
      return { kept: undefined, dropped: false };
    }
  },
  keep: ({ log, seed }) => {
    try {
      const storage = open();
      if (seed === undefined) storage.removeItem(seedKey);
      else storage.setItem(seedKey, `${seed} ${begunAt(log)}`);
      storage.setItem(logKey, JSON.stringify(log));
      return true;
    } catch {
      return false;
    }
  },
});

function readFrom(storage: Storage): Reading {
  const text = storage.getItem(logKey);
  if (text === null) return { kept: undefined, dropped: false };
  const log = readLog(text);
  if (log === undefined) {
    storage.removeItem(logKey);
    storage.removeItem(seedKey);
    return { kept: undefined, dropped: true };
  }
  const [seed, at] = (storage.getItem(seedKey) ?? "").split(" ").map(Number);
  const known = Number.isSafeInteger(seed) && at === begunAt(log);
  return { kept: { log, ...(known ? { seed } : {}) }, dropped: false };
}

/** Which session a number belongs to: a disk that was full in between may hold the log of another one. */
const begunAt = (log: Log): number => log[0]?.at ?? 0;

import type { Finding } from "#core/checks/finding.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { DecibelsFullScale } from "#core/units/units.ts";

/**
 * What an entry says: what the rig is, what somebody changed, what cannot be changed here, what was found and how loud the test signal was
 * meanwhile, that nobody is at a position, what the session is called and who does it, or that an earlier entry is taken back.
 */
export type Said =
  /** Plain data: a rig that was built is none. */
  | { readonly entry: "drawing"; readonly rig: Rig & { readonly part?: never } }
  | { readonly entry: "move"; readonly move: Move }
  | { readonly entry: "cannot"; readonly move: Move }
  | {
      readonly entry: "finding";
      readonly finding: Finding;
      /** Of the test signal, as it was answered; left out where none played or nobody knows. */
      readonly level?: DecibelsFullScale;
    }
  | { readonly entry: "absent"; readonly position: string }
  | { readonly entry: "titled"; readonly name?: string; readonly who?: string }
  | { readonly entry: "taken back"; readonly taken: string };

/** One entry of a log. `at` is milliseconds since 1970, `seen` the last entry its author had seen. */
export type Entry = Said & {
  readonly id: string;
  readonly at: number;
  readonly seen?: string;
};

/** A session: entries in order, never rewritten. All else is derived from it. */
export type Log = readonly Entry[];

/** The log with one more entry. The time is the caller's. */
export function add(log: Log, said: Said, at: number): Log {
  const last = log.at(-1);
  const id = freeId(log);
  return [...log, { ...said, id, at, ...(last === undefined ? {} : { seen: last.id }) }];
}

/** Its place in the log; where an entry before it was lost, the next that nothing has. */
function freeId(log: Log): string {
  let place = log.length + 1;
  while (log.some(({ id }) => id === String(place))) place += 1;
  return String(place);
}

/** The entries that hold: not taken back, by an entry that is not itself taken back. */
export function holding(log: Log): Log {
  const taken = new Set<string>();
  for (const entry of [...log].reverse())
    if (entry.entry === "taken back" && !taken.has(entry.id)) taken.add(entry.taken);
  return log.filter((entry) => entry.entry !== "taken back" && !taken.has(entry.id));
}

type Drawing = Extract<Entry, { entry: "drawing" }>;

/** The drawing that holds: what the rig is. */
export const drawingIn = (log: Log): Drawing | undefined =>
  holding(log).findLast((one) => one.entry === "drawing");

/** The rig as a log draws it. */
export const rigIn = (log: Log): Rig | undefined => drawingIn(log)?.rig;

/** The last finding or move that holds: what 'take it back' takes. */
export const lastToTake = (log: Log): Entry | undefined =>
  holding(log).findLast(({ entry }) => entry !== "drawing" && entry !== "titled");

/** The last drawing that holds, where one holds before it: what 'undo' takes back. The first says what the rig is at all. */
export function lastDrawing(log: Log): Entry | undefined {
  const drawings = holding(log).filter(({ entry }) => entry === "drawing");
  return drawings.length < 2 ? undefined : drawings.at(-1);
}

/** The last taking back of a drawing that holds, with nothing drawn since: what 'redo' takes back. */
export function lastUndone(log: Log): Entry | undefined {
  const taken = new Set<string>();
  const drawn = new Set(log.flatMap(({ entry, id }) => (entry === "drawing" ? [id] : [])));
  for (const entry of [...log].reverse()) {
    if (entry.entry === "drawing") return undefined;
    if (entry.entry !== "taken back") continue;
    if (drawn.has(entry.taken) && !taken.has(entry.id)) return entry;
    if (!taken.has(entry.id)) taken.add(entry.taken);
  }
  return undefined;
}

/** What a session is called and who does it, as the last entries say that hold; what was cleared is none. */
export function titleOf(log: Log): { readonly name?: string; readonly who?: string } {
  const titles = holding(log).filter((entry) => entry.entry === "titled");
  const name = titles.findLast((one) => one.name !== undefined)?.name;
  const who = titles.findLast((one) => one.who !== undefined)?.who;
  return { ...(name ? { name } : {}), ...(who ? { who } : {}) };
}

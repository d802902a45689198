import { drawingIn, type Log } from "./log.ts";
import { isEntry } from "./reading.ts";

/** Why an entry was left out. */
const losses = ["not understood", "an id that is taken", "takes back what is not there"] as const;

/** An entry that was left out of a log: its place, from one, what it called itself, and why. */
export interface Lost {
  readonly place: number;
  readonly entry?: string;
  readonly why: (typeof losses)[number];
}

/** A log as far as it can be understood. */
export interface Mended {
  readonly log: Log;
  readonly lost: readonly Lost[];
}

/**
 * A log out of what was kept: entries that cannot be understood are left out and named, all others stay as they are. Ids, times and what
 * was seen are filled in where they are left out. `before` is what they go on from. Throws on nothing.
 */
export function mendedLog(entries: readonly unknown[], before: Log = []): Mended {
  const log: Log[number][] = [];
  const lost: Lost[] = [];
  const ids = new Set(before.map(({ id }) => id));
  for (const [index, one] of entries.entries()) {
    const entry = filled(one, before.length + index, log.at(-1) ?? before.at(-1));
    const read = readAgainst(ids, entry);
    if ("why" in read) lost.push({ place: index + 1, ...calledItself(one), why: read.why });
    else {
      log.push(read.entry);
      ids.add(read.entry.id);
    }
  }
  return { log, lost };
}

type Read = { readonly entry: Log[number] } | Pick<Lost, "why">;

function readAgainst(ids: ReadonlySet<string>, entry: unknown): Read {
  if (!isEntry(entry)) return { why: "not understood" };
  if (ids.has(entry.id)) return { why: "an id that is taken" };
  return entry.entry === "taken back" && !ids.has(entry.taken)
    ? { why: "takes back what is not there" }
    : { entry };
}

/** With what an entry bears besides what it says: its place, the time and the id of the one before it. */
function filled(value: unknown, index: number, before: Log[number] | undefined): unknown {
  if (typeof value !== "object" || value === null) return value;
  const seen = before === undefined ? {} : { seen: before.id };
  return { id: String(index + 1), at: before?.at ?? 0, ...seen, ...value };
}

function calledItself(value: unknown): Pick<Lost, "entry"> {
  if (typeof value !== "object" || value === null || !("entry" in value)) return {};
  return typeof value.entry === "string" ? { entry: value.entry.slice(0, 20) } : {};
}

/** Whether a log says what the rig is. */
export const isDrawn = (log: Log): boolean => drawingIn(log) !== undefined;

import type { Rig } from "#core/rig/rig.ts";
import { type Names, namesThrough } from "#core/rig/same-parts.ts";
import { drawingIn, type Entry, holding, type Log } from "./log.ts";

/**
 * How each entry's names are spoken in the drawing that holds now: through every drawing from the one that held when it was entered. Names are made
 * once for all entries between two changes of the drawing, and only where one asks for them.
 */
export function namesSince(log: Log): (entry: Entry) => Names {
  const drawings = holding(log).filter((one) => one.entry === "drawing");
  const about = aboutDrawings(log);
  const since = new Map<Entry, () => Names>();
  const gone: Entry[] = [];
  let names = once(drawings.map(({ rig }) => rig));
  for (const entry of log) {
    if (about.has(entry)) {
      gone.push(entry);
      const then = drawingIn(gone);
      const later = drawings.filter((one) => !gone.includes(one));
      const rigs = [then, ...later, drawings.at(-1)].flatMap((one) => (one ? [one.rig] : []));
      names = once([...new Set(rigs)]);
    }
    since.set(entry, names);
  }
  return (entry) => (since.get(entry) ?? names)();
}

/** Drawings, and what takes them back or puts them in force again: few, in a log of many. */
export function aboutDrawings(log: Log): ReadonlySet<Entry> {
  const ids = new Set<string>();
  const about = log.filter((entry) => {
    const is = entry.entry === "drawing" || (entry.entry === "taken back" && ids.has(entry.taken));
    if (is) ids.add(entry.id);
    return is;
  });
  return new Set(about);
}

function once(rigs: readonly Rig[]): () => Names {
  let made: Names | undefined;
  return () => {
    made ??= namesThrough(rigs);
    return made;
  };
}

import type { Anything } from "./command.ts";

/** A way to break the documented example, and what must be said of it: a pointer first, and what was expected. */
export interface BadCase {
  readonly name: string;
  readonly change: (one: Anything) => void;
  readonly says: string;
}

/** A case broken by a change to the example. */
export const bad = (name: string, says: string, change: BadCase["change"]): BadCase => ({
  name,
  says,
  change,
});

/** An entry that comes first in the log of the example. */
export const first = (name: string, says: string, entry: object): BadCase =>
  bad(name, says, (one) => one.log.unshift(entry));

/** A finding as an entry. */
export const finding = (asked: object, rest: object = { results: [] }) => ({
  entry: "finding",
  finding: { asked, ...rest },
});

/** A move as an entry. */
export const move = (one: object) => ({ entry: "move", move: one });

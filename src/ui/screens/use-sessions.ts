import { useEffect, useState } from "preact/hooks";
import { add, holding, type Log, type Said } from "#core/session/log.ts";
import type { Told } from "#storage/shelf.ts";
import type { Listed, Listing, Unread } from "#storage/store.ts";
import type { Notice } from "#ui/words/notice.ts";
import { standing } from "./keeper-words.ts";
import { entered, without } from "./page.ts";
import type { Held } from "./use-page.ts";

/** Every session that is kept, and what can be done with one besides going on with it. */
export interface Sessions {
  /** Undefined until they were read, and where they could not be. */
  readonly all: readonly Listed[] | undefined;
  /** Those in which no rig can be understood. */
  readonly unread: readonly Unread[];
  /** Why they could not be read. */
  readonly amiss: Notice | undefined;
  readonly readAgain: () => void;
  readonly rename: (one: Listed, name: string) => void;
  readonly remove: (one: Listed | Unread) => void;
  readonly restore: (one: Listed | Unread) => void;
  /** Lays a session down that came from a file. It is not the one that was in hand last. */
  readonly lay: (log: Log, seed: number | undefined) => Promise<boolean>;
  /** The same where it lies there already, deleted. */
  readonly layAgain: (one: Listed) => Promise<boolean>;
}

/** Reads them when the screen comes, after everything that is done here, and when another tab writes. */
export function useSessions(held: Held): Sessions {
  const { change, keeping } = held;
  const { store, now } = held.edges;
  const [told, setTold] = useState<Told<Listing>>();
  const [reads, setReads] = useState(0);
  const again = () => setReads((before) => before + 1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each count and each entry reads again
  useEffect(() => {
    let here = true;
    void store.list().then((listed) => {
      if (here) setTold(listed);
    });
    return () => {
      here = false;
    };
  }, [store, reads, held.page.log]);
  useEffect(() => store.hear(() => setReads((before) => before + 1)), [store]);
  const after = (done: Told<unknown>) => {
    if ("trouble" in done)
      change((one) => ({ ...one, notice: standing([done.trouble]) ?? "taken" }));
    again();
    return "value" in done;
  };
  const mark = (one: Listed | Unread, marks: { deleted?: number; opened?: number }) =>
    store.mark(one.session, ({ deleted: _, ...card }) => ({ ...card, ...marks })).then(after);
  return {
    ...seen(told),
    readAgain: again,
    rename: (one, name) => {
      const said: Said = { entry: "titled", name };
      if (one.session === keeping.session) change((page) => entered(page, said, now()));
      else void writeTo(held, one, said).then(after);
    },
    remove: (one) => {
      void mark(one, { deleted: now() });
      if (one.session === keeping.session) change(without);
    },
    // One that is not understood is nothing to go on with.
    restore: (one) => void mark(one, "log" in one ? { opened: now() } : {}),
    lay: (log, seed) => {
      const session = store.name();
      const adding = { session, place: 0, entries: log, whole: log, seed, at: now(), aside: true };
      return store.keep(adding).then(after);
    },
    layAgain: (one) => mark(one, { opened: 0 }),
  };
}

/** What is shown of what was told. */
function seen(told: Told<Listing> | undefined): Pick<Sessions, "all" | "unread" | "amiss"> {
  if (told === undefined) return { all: undefined, unread: [], amiss: undefined };
  if ("trouble" in told)
    return { all: undefined, unread: [], amiss: standing([told.trouble]) ?? "failed" };
  return { all: told.value.sessions, unread: told.value.unread, amiss: undefined };
}

/** One more entry at the end of a session that is not in hand. */
function writeTo(
  { edges: { store, now } }: Held,
  { session, log, next, seed }: Listed,
  said: Said,
) {
  const whole = add(log, said, now());
  return store.keep({ session, place: next, entries: whole.slice(-1), whole, seed, at: now() });
}

/** When a session began, ms since 1970. */
export const begunAt = (log: Log): number => holding(log)[0]?.at ?? 0;

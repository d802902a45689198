import { useEffect, useState } from "preact/hooks";
import { add, holding, type Log, type Said } from "#core/session/log.ts";
import type { Told } from "#storage/shelf.ts";
import type { Listed } from "#storage/store.ts";
import { troubleNotice } from "./keeper-words.ts";
import { entered, without } from "./page.ts";
import type { Held } from "./use-page.ts";

/** Every session that is kept, and what can be done with one besides going on with it. */
export interface Sessions {
  /** Undefined until they were read. */
  readonly all: readonly Listed[] | undefined;
  readonly rename: (one: Listed, name: string) => void;
  readonly remove: (one: Listed) => void;
  readonly restore: (one: Listed) => void;
  /** Lays a session down that came from a file. */
  readonly lay: (log: Log, seed: number | undefined) => Promise<boolean>;
}

/** Reads them when the screen comes, after everything that is done here, and when another tab writes. */
export function useSessions(held: Held): Sessions {
  const { change, keeping } = held;
  const { store, now } = held.edges;
  const [all, setAll] = useState<readonly Listed[]>();
  const [reads, setReads] = useState(0);
  const again = () => setReads((before) => before + 1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each count and each entry reads again
  useEffect(() => {
    let here = true;
    void store.list().then((told) => {
      if (here) setAll("value" in told ? told.value : []);
    });
    return () => {
      here = false;
    };
  }, [store, reads, held.page.log]);
  useEffect(() => store.hear(() => setReads((before) => before + 1)), [store]);
  const after = (told: Told<unknown>) => {
    if ("trouble" in told)
      change((one) => ({
        ...one,
        notice: told.trouble === "taken" ? "taken" : troubleNotice[told.trouble],
      }));
    again();
    return "value" in told;
  };
  const mark = (one: Listed, deleted: number | undefined) =>
    store
      .mark(one.session, ({ deleted: _, ...card }) =>
        deleted === undefined ? { ...card, opened: now() } : { ...card, deleted },
      )
      .then(after);
  return {
    all,
    rename: (one, name) => {
      const said: Said = { entry: "titled", name };
      if (one.session === keeping.session) change((page) => entered(page, said, now()));
      else void writeTo(held, one, said).then(after);
    },
    remove: (one) => {
      void mark(one, now());
      if (one.session === keeping.session) change(without);
    },
    restore: (one) => void mark(one, undefined),
    lay: (log, seed) =>
      store
        .keep({ session: store.name(), place: 0, entries: log, whole: log, seed, at: now() })
        .then(after),
  };
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

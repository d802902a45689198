import type { Log } from "#core/session/log.ts";
import {
  type Adding,
  type Card,
  cardOf,
  placing,
  type Shelf,
  type Told,
  type Trouble,
} from "./shelf.ts";

interface Lain {
  card: Card;
  readonly entries: unknown[];
  readonly seed: number | undefined;
}

/** A shelf in memory, for tests: several pages may stand at one. */
export interface MemoryShelf extends Shelf {
  /** Lays a session down, as an earlier visit left it. */
  readonly lay: (session: string, entries: readonly unknown[], seed?: number) => void;
  /** What lies there of a session; of the one that was in hand last, where none is named. */
  readonly log: (session?: string) => Log;
  /** What refuses from now on. */
  readonly refuse: (trouble: Trouble | undefined) => void;
  /** Does nothing that is asked from now on, as a disk that hangs, until what it gives is called. */
  readonly hold: () => () => void;
}

/** What is asked waits before it while it is held. */
function createGate() {
  let held: Promise<void> | undefined;
  return {
    held: () => held,
    hold: () => {
      let release = (): void => undefined;
      held = new Promise((resolve) => {
        release = resolve;
      });
      return () => {
        held = undefined;
        release();
      };
    },
  };
}

/** A fake of the browser's database. It holds a copy of what it is given, or refuses as told; what cannot be copied it throws, as that one does. */
export function createMemoryShelf(): MemoryShelf {
  const lain = new Map<string, Lain>();
  let refused: Trouble | undefined;
  const gate = createGate();
  const told = async <Value>(value: () => Value): Promise<Told<Value>> => {
    await gate.held();
    return refused === undefined ? { value: value() } : { trouble: refused };
  };
  const newest = () =>
    [...lain.values()].sort((a, b) => b.card.opened - a.card.opened)[0]?.card.session ?? "";
  return {
    lay: (session, entries, seed) =>
      void lain.set(session, {
        card: { session, opened: (lain.size + 1) / 1000 },
        entries: [...entries],
        seed,
      }),
    log: (session = newest()) => [...(lain.get(session)?.entries ?? [])] as unknown as Log,
    refuse: (trouble) => {
      refused = trouble;
    },
    hold: gate.hold,
    cards: () => told(() => [...lain.values()].map(({ card }) => card)),
    read: (session, place) =>
      told(() => {
        const entries = lain.get(session)?.entries ?? [];
        return { entries: entries.slice(place), next: entries.length };
      }),
    seed: (session) => told(() => lain.get(session)?.seed),
    add: async (adding) => {
      await gate.held();
      return refused === undefined ? added(lain, adding) : { trouble: refused };
    },
    mark: (session, marks) =>
      told(() => {
        const there = lain.get(session);
        if (there !== undefined) there.card = marks(there.card);
        return undefined;
      }),
    clear: (before) =>
      told(() => {
        for (const { card } of [...lain.values()])
          if ((card.deleted ?? before) < before) lain.delete(card.session);
        return undefined;
      }),
  };
}

function added(lain: Map<string, Lain>, adding: Adding): Told<number> {
  const { session, seed } = adding;
  const lying = lain.get(session);
  const card = cardOf(adding, lying?.card);
  const fresh: Omit<Lain, "card"> = { entries: [], seed };
  const { entries, ...there } = lying ?? fresh;
  const placed = placing(adding, entries.length);
  if (placed === undefined) return { trouble: "taken" };
  entries.push(...structuredClone(placed.entries));
  lain.set(session, { ...there, entries, card });
  return { value: entries.length };
}

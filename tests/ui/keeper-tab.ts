import { vi } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { createFakeTurns } from "#storage/fake-turns.ts";
import type { MemoryShelf } from "#storage/memory-shelf.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createStore } from "#storage/store.ts";
import { Keeper } from "#ui/screens/keeper.ts";
import type { Shown } from "#ui/screens/keeping.ts";
import { begun, entered, firstPage, type Page, type View } from "#ui/screens/page.ts";

/** What is shown of a page at a shelf, and what may be pressed on it. */
class Tab {
  shown: Shown;
  readonly keeper: Keeper;
  readonly stop: () => void;

  constructor(shelf: MemoryShelf, name: () => string, turns = createFakeTurns().tab()) {
    const store = createStore({ shelf, turns, older: () => createMemoryStorage(), now, name });
    this.keeper = new Keeper(
      store,
      firstPage({ theme: "dark", tongue: "en", numbers: false }),
      now,
    );
    this.shown = this.keeper.shown;
    this.stop = this.keeper.start((shown) => {
      this.shown = shown;
    });
  }

  get ids(): readonly string[] {
    return this.shown.page.log.map(({ id }) => id);
  }

  get notice() {
    return this.shown.page.notice;
  }

  readonly begin = () => this.keeper.change((page) => begun(page, straightIn, undefined, now()));
  /** An answer, and what is shown after it. */
  readonly answer = (position = "position 1") =>
    this.keeper.change((page) => ({
      ...entered(page, { entry: "absent", position }, now()),
      view: { screen: "board", came: position },
    }));
  readonly show = (view: View) => this.keeper.change((page: Page) => ({ ...page, view }));
}

let time = 0;
const now = () => ++time;

const at = "position 1";
export const inHand: View = { screen: "position", position: at };
/** Until everything that was begun is done that waits for no clock. */
export const settled = () => vi.advanceTimersByTimeAsync(0);
export const idsIn = (shelf: MemoryShelf, session: string) =>
  shelf.log(session).map(({ id }) => id);

/** Opens one tab after the other, and closes them all. */
export function tabs() {
  let named = 0;
  const opened: Tab[] = [];
  return {
    open: async (shelf: MemoryShelf, turns = createFakeTurns().tab()) => {
      const tab = new Tab(shelf, () => `session ${++named}`, turns);
      opened.push(tab);
      await settled();
      return tab;
    },
    close: () => {
      for (const { stop } of opened) stop();
    },
  };
}

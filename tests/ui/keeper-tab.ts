import { afterEach, beforeEach, vi } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { createFakeTurns } from "#storage/fake-turns.ts";
import { createMemoryShelf, type MemoryShelf } from "#storage/memory-shelf.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createStore } from "#storage/store.ts";
import { Keeper } from "#ui/screens/keeper.ts";
import type { Shown } from "#ui/screens/keeping.ts";
import { begun, entered, firstPage, type Page, type View } from "#ui/screens/page.ts";
import { titled } from "#ui/screens/sheet-view.ts";

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
  /** Somebody typed what the session is called, or who does it. */
  readonly title = (title: { readonly name?: string; readonly who?: string }) =>
    this.keeper.change((page) => titled(page, title, now()));
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

/** A shelf, and tabs at it, for every test of a file; the clock stands until it is set on. */
export class Tabs {
  shelf: MemoryShelf = createMemoryShelf();
  #named = 0;
  #opened: Tab[] = [];

  constructor() {
    beforeEach(() => {
      vi.useFakeTimers();
      this.shelf = createMemoryShelf();
      this.#named = 0;
    });
    afterEach(() => {
      for (const { stop } of this.#opened.splice(0)) stop();
      vi.useRealTimers();
      vi.unstubAllGlobals();
    });
  }

  /** Opens one tab after the other. */
  readonly open = async (turns = createFakeTurns().tab()) => {
    const tab = new Tab(this.shelf, () => `session ${++this.#named}`, turns);
    this.#opened.push(tab);
    await settled();
    return tab;
  };
}

import { describe, expect, test, vi } from "vitest";
import { createFakeTurns } from "#storage/fake-turns.ts";
import { without } from "#ui/screens/page.ts";
import { idsIn, inHand, settled, Tabs } from "./keeper-tab.ts";

const tabs = new Tabs();

describe("where another tab wrote first", () => {
  /** Two tabs at one session without locks, the second of which knows one entry less. */
  async function two() {
    const one = await tabs.open();
    one.begin();
    await settled();
    const other = await tabs.open();
    other.show(inHand);
    await settled();
    one.answer("position 2");
    await settled();
    expect([one.ids, other.ids]).toEqual([["1", "2"], ["1"]]);
    return other;
  }

  test("the press is to be made again, on the screen it was made on", async () => {
    const other = await two();
    other.answer();
    await settled();
    expect(other.notice).toBe("taken");
    expect(other.ids).toEqual(["1", "2"]);
    expect(other.shown.page.view).toEqual(inHand);
    other.answer();
    await settled();
    expect(other.notice).toBe(undefined);
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
    expect(other.ids).toEqual(["1", "2", "3"]);
  });

  test("nothing that was pressed after it is shown without being written", async () => {
    const other = await two();
    const answers = tabs.shelf.hold();
    other.answer();
    await vi.advanceTimersByTimeAsync(1000);
    other.answer();
    answers();
    await settled();
    expect(other.ids).toEqual(["1", "2"]);
    expect(other.shown.page.log).toEqual(tabs.shelf.log("session 1"));
    expect(other.shown.page.view).toEqual(inHand);
    expect(other.shown.keeping.kept).toBe(true);
    other.answer();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
  });
});

describe("of two tabs with locks", () => {
  test("one lets the session go only after what it was about to write", async () => {
    const turns = createFakeTurns();
    const one = await tabs.open(turns.tab());
    one.begin();
    await settled();
    const other = await tabs.open(turns.tab());
    other.show(inHand);
    await settled();
    expect(other.shown.keeping.follows).toBe(true);
    const answers = tabs.shelf.hold();
    one.answer();
    one.show({ screen: "start" });
    await settled();
    expect(other.shown.keeping.follows).toBe(true);
    answers();
    await settled();
    expect(other.shown.keeping.follows).toBe(false);
    expect(other.ids).toEqual(["1", "2"]);
    other.answer();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
  });

  test("a press that came before it was known who writes is not written beside that one", async () => {
    const turns = createFakeTurns();
    const one = await tabs.open(turns.tab());
    one.begin();
    await settled();
    const other = await tabs.open(turns.tab());
    other.show(inHand);
    other.answer();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1"]);
    expect(other.ids).toEqual(["1"]);
    expect(other.notice).toBe("taken");
    expect(other.shown.page.view).toEqual(inHand);
    expect(other.shown.keeping).toMatchObject({ follows: true, kept: true });
  });

  test("a session that is deleted in one and gone on with in the other stays", async () => {
    const turns = createFakeTurns();
    const one = await tabs.open(turns.tab());
    one.begin();
    await settled();
    await tabs.shelf.mark("session 1", (card) => ({ ...card, deleted: 1 }));
    one.answer();
    await settled();
    await tabs.shelf.clear(2);
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2"]);
    await tabs.shelf.mark("session 1", (card) => ({ ...card, deleted: 1 }));
    one.keeper.change(without);
    await settled();
    await tabs.shelf.clear(2);
    expect(idsIn(tabs.shelf, "session 1")).toEqual([]);
  });
});

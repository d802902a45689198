import { describe, expect, test, vi } from "vitest";
import { idsIn, inHand, settled, Tabs } from "./keeper-tab.ts";

const tabs = new Tabs();

describe("on a disk that answers late", () => {
  test("a double tap begins one session", async () => {
    const tab = await tabs.open();
    const answers = tabs.shelf.hold();
    tab.begin();
    tab.begin();
    await settled();
    expect(tab.ids).toEqual([]);
    answers();
    await settled();
    expect(tab.ids).toEqual(["1"]);
    const cards = await tabs.shelf.cards();
    expect("value" in cards && cards.value.map(({ session }) => session)).toEqual(["session 1"]);
  });

  test("a double tap enters once, whatever way it enters", async () => {
    const tab = await tabs.open();
    tab.begin();
    await settled();
    const answers = tabs.shelf.hold();
    tab.answer();
    tab.answer();
    await settled();
    expect(tab.ids).toEqual(["1"]);
    answers();
    await settled();
    expect(tab.ids).toEqual(["1", "2"]);
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2"]);
    tab.answer();
    await settled();
    expect(tab.ids).toEqual(["1", "2", "3"]);
  });

  test("what is pressed is shown after a second, and the page says that it is not kept yet", async () => {
    const tab = await tabs.open();
    tab.begin();
    await settled();
    const answers = tabs.shelf.hold();
    tab.answer();
    await vi.advanceTimersByTimeAsync(999);
    expect(tab.ids).toEqual(["1"]);
    await vi.advanceTimersByTimeAsync(1);
    expect(tab.ids).toEqual(["1", "2"]);
    expect(tab.notice).toBe("late");
    expect(tab.shown.keeping.kept).toBe(false);
    // From here on nothing waits for it, neither a look elsewhere nor the next answer.
    tab.show(inHand);
    expect(tab.shown.page.view).toEqual(inHand);
    tab.answer();
    expect(tab.ids).toEqual(["1", "2", "3"]);
    answers();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
    expect(tab.notice).toBe(undefined);
    expect(tab.shown.keeping.kept).toBe(true);
    tabs.shelf.hold();
    tab.answer();
    await settled();
    expect(tab.ids, "it is waited for again").toEqual(["1", "2", "3"]);
  });
});

describe("what was not written of a session", () => {
  test("is written though another session was begun meanwhile", async () => {
    const tab = await tabs.open();
    tab.begin();
    await settled();
    const answers = tabs.shelf.hold();
    tab.answer();
    await vi.advanceTimersByTimeAsync(1000);
    tab.begin();
    answers();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2"]);
    expect(idsIn(tabs.shelf, "session 2")).toEqual(["1"]);
    expect(tab.notice).toBe(undefined);
  });

  test("is tried again with the next session's entries where the disk was full, and said until then", async () => {
    const tab = await tabs.open();
    tab.begin();
    await settled();
    tabs.shelf.refuse("full");
    tab.answer();
    await settled();
    tab.begin();
    await settled();
    expect(tab.notice).toBe("full");
    tab.answer();
    await settled();
    expect(tab.notice).toBe("full");
    expect(tab.shown.keeping.kept).toBe(false);
    tabs.shelf.refuse(undefined);
    tab.answer();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2"]);
    expect(idsIn(tabs.shelf, "session 2")).toEqual(["1", "2", "3"]);
    expect(tab.notice).toBe(undefined);
    expect(tab.shown.keeping.kept).toBe(true);
  });

  test("is in hand again where that session is opened from the list, which knows less", async () => {
    const tab = await tabs.open();
    tab.begin();
    await settled();
    const listed = { session: "session 1", log: tabs.shelf.log("session 1"), next: 1 };
    tabs.shelf.refuse("full");
    tab.answer();
    await settled();
    tab.begin();
    await settled();
    tab.keeper.open(listed, (page) => ({ ...page, view: { screen: "board" } }));
    await settled();
    expect(tab.ids).toEqual(["1", "2"]);
    tabs.shelf.refuse(undefined);
    tab.answer();
    await settled();
    expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
  });
});

test("a mistake in one thing that is done at the disk keeps nothing else from being done", async () => {
  const reported: unknown[] = [];
  vi.stubGlobal("reportError", (error: unknown) => reported.push(error));
  tabs.shelf = { ...tabs.shelf, mark: () => Promise.reject(new Error("broken")) };
  const tab = await tabs.open();
  tab.begin();
  tab.show(inHand);
  await settled();
  expect(reported).not.toEqual([]);
  tab.answer();
  await settled();
  expect(tab.ids).toEqual(["1", "2"]);
  expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2"]);
});

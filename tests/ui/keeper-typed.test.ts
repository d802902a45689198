import { expect, test } from "vitest";
import { titleOf } from "#core/session/log.ts";
import { createFakeTurns } from "#storage/fake-turns.ts";
import { idsIn, settled, Tabs } from "./keeper-tab.ts";

const tabs = new Tabs();

/** One tab with a session, and a disk that hangs until it is told to answer. */
async function begun() {
  const tab = await tabs.open();
  tab.begin();
  await settled();
  return { tab, answers: tabs.shelf.hold() };
}

test("what is typed while the last entry is being written is entered too; an answer is not", async () => {
  const { tab, answers } = await begun();
  tab.title({ name: "Sunday" });
  tab.title({ who: "Ines" });
  tab.answer();
  await settled();
  expect(tab.ids, "nothing is shown before it is on the disk").toEqual(["1"]);
  answers();
  await settled();
  expect(titleOf(tab.shown.page.log)).toEqual({ name: "Sunday", who: "Ines" });
  expect(idsIn(tabs.shelf, "session 1")).toEqual(["1", "2", "3"]);
  expect(tab.shown.keeping.kept).toBe(true);
});

test("what is typed right behind an answer comes after it", async () => {
  const { tab, answers } = await begun();
  tab.answer();
  tab.title({ who: "Ines" });
  answers();
  await settled();
  expect(tab.shown.page.log.map(({ entry }) => entry)).toEqual(["drawing", "absent", "titled"]);
});

test("the same said twice is one entry, and what it is called anyway is none", async () => {
  const { tab, answers } = await begun();
  tab.title({ name: "Sunday" });
  tab.title({ name: "Sunday" });
  tab.title({ who: "" });
  answers();
  await settled();
  expect(tab.ids).toEqual(["1", "2"]);
  tab.title({ name: "" });
  await settled();
  tab.title({
    name: tab.shown.page.log[0]?.entry === "drawing" ? tab.shown.page.log[0].rig.name : "",
  });
  await settled();
  expect(tab.ids).toEqual(["1", "2", "3"]);
});

test("both gone because another tab wrote meanwhile, it is said, and they can be typed again", async () => {
  const turns = createFakeTurns();
  const tab = await tabs.open(turns.tab());
  tab.begin();
  await settled();
  const whole = tab.shown.page.log;
  const theirs = { id: "2", at: 5, entry: "absent", position: "position 1" } as const;
  const answers = tabs.shelf.hold();
  tab.title({ name: "Sunday" });
  tab.title({ who: "Ines" });
  tabs.shelf.lay("session 1", [...whole, theirs]);
  answers();
  await settled();
  expect(tab.ids).toEqual(["1", "2"]);
  expect(tab.notice).toBe("taken");
  tab.title({ name: "Sunday" });
  await settled();
  expect(titleOf(tabs.shelf.log("session 1"))).toEqual({ name: "Sunday" });
});

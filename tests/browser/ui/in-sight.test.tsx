import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import type { Option } from "#core/diagnosis/options.ts";
import { add, type Log } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { at, derived, empty } from "#tests/support/entries.ts";
import { words } from "#ui/words/english.ts";
import { button, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const box = (name: string | RegExp) => button(name).element().getBoundingClientRect();

test("on a narrow board the next step stays in sight, and covers nothing for good", async () => {
  await tab.viewport(390, 844);
  open();
  await press("Tallow Hall story evening");
  await expect.element(button("Listen at 1 host")).toBeVisible();
  expect(document.documentElement.scrollHeight).toBeGreaterThan(innerHeight);
  expect(box("Listen at 1 host").bottom).toBeLessThanOrEqual(innerHeight);
  const last = /^5 desk/;
  for (let tabs = 0; tabs < 20 && document.activeElement !== button(last).element(); tabs++)
    await keys("{Tab}");
  await expect.element(button(last)).toHaveFocus();
  expect(box(last).bottom).toBeLessThanOrEqual(box("Listen at 1 host").top);
  scrollTo(0, document.documentElement.scrollHeight);
  await expect
    .poll(() => box("the sheet").top)
    .toBeGreaterThanOrEqual(box("Listen at 1 host").bottom);
  expect(box("the sheet").bottom).toBeLessThanOrEqual(innerHeight);
});

/** One dead side at the first of five positions, with nothing to be seen anywhere and nothing to be tried. */
function dead(): Log {
  let log = at(empty, "position 1", "right", "nothing");
  for (let asked = 0; asked < 20; asked++) {
    const { advice } = derived(log).standing("position 1");
    if (advice.advice === "do") log = add(log, { entry: "cannot", move: advice.move }, 0);
    else if (advice.advice === "ask") log = answered(log, advice.option.asked);
    else return log;
  }
  throw new Error("twenty answers led nowhere");
}

function answered(log: Log, asked: Option["asked"]): Log {
  if (asked.check === "look")
    return add(
      log,
      { entry: "finding", finding: { asked, results: [["all as it should be"]] } },
      0,
    );
  if (asked.check !== "pair") throw new Error(`${asked.check} has no answer here`);
  return at(log, asked.position, "pair", "left ear", "left ear");
}

test("what to do about a verdict is said before it is drawn", async () => {
  await tab.viewport(1280, 800);
  const storage = createMemoryStorage();
  storage.setItem("leftwright.log", JSON.stringify(dead()));
  open({ storage });
  await press("Go on with the last session");
  await press(/^1 host/);
  await expect.element(button(words.doing.notPossible)).toBeVisible();
  expect(document.querySelector("section.verdict .next-move svg")).not.toBeNull();
  expect(box(words.doing.notPossible).bottom).toBeLessThanOrEqual(innerHeight);
  const why = tab.getByText(words.verdict.why, { exact: true }).first().element();
  expect(why.getBoundingClientRect().width).toBeGreaterThanOrEqual(44);
});

test.each([
  [390, 844],
  [1280, 800],
])("what is wanted somewhere has its own row and its name, at %i by %i", async (width, height) => {
  await tab.viewport(width, height);
  open();
  await press("Tallow Hall story evening");
  await press("Listen at 1 host");
  await expect.element(button("Play")).toBeVisible();
  await tab.getByText(words.round.otherwise).click();
  await expect.element(tab.getByText(words.round.wants)).toBeVisible();
  expect(box("stereo").top - box("Nobody is here").bottom).toBeGreaterThanOrEqual(16);
});

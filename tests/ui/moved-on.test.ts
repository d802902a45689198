import { expect, test } from "vitest";
import { positionWanting } from "#core/drawing/names.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { startKeys } from "#core/rig/start-words.ts";
import { starts } from "#core/rig/starts.ts";
import { add, type Log } from "#core/session/log.ts";
import { at, well } from "#tests/support/entries.ts";
import { movedOn, wentBack } from "#ui/screens/moved-on.ts";
import { firstPage, type Page } from "#ui/screens/page.ts";
import { firstWords } from "#ui/words/first-words.ts";

const drawn = (names: readonly string[]): Log =>
  add([], { entry: "drawing", rig: fromHeadphoneSocket("a table", names) }, 0);

/** In-ears of which the first has all in the left ear, so that one answer leads to the second. */
const stage = (): Log => {
  const rig = starts[startKeys.indexOf("stage in-ears")]?.make(firstWords.en.starts);
  const edited = rig && positionWanting(rig, "position 1", "left ear");
  if (edited === undefined || !("rig" in edited)) throw new Error("nothing is drawn");
  return add([], { entry: "drawing", rig: edited.rig }, 0);
};

/** The page at position 1 with a log. */
const page = (log: Log): Page => ({
  ...firstPage({ theme: "dark", tongue: "en", numbers: false }),
  log,
  view: { screen: "position", position: "position 1" },
});

const two = drawn(["host", "guest"]);
const five = drawn(["host", "reader", "fiddle", "guest", "desk"]);

test("once a position is healthy the next one is in hand, and says where it came from", () => {
  expect(movedOn(page(two), page(well(two, "position 1"))).view).toEqual({
    screen: "position",
    position: "position 2",
    came: "position 1",
  });
});

test("where the others are quicker asked all at once, the board comes", () => {
  expect(movedOn(page(five), page(well(five, "position 1"))).view).toEqual({
    screen: "board",
    came: "position 1",
  });
});

test("one answer moves nowhere, nor does trouble, nor the last position of all", () => {
  const one = page(at(two, "position 1", "left", "left ear"));
  expect(movedOn(page(two), one)).toBe(one);
  const wrong = page(at(two, "position 1", "left", "nothing"));
  expect(movedOn(page(two), wrong)).toBe(wrong);
  const before = well(two, "position 2");
  const all = page(well(before, "position 1"));
  expect(movedOn(page(before), all)).toBe(all);
});

test("who looks at a healthy position again stays there", () => {
  const healthy = page(well(two, "position 1"));
  expect(movedOn(healthy, healthy)).toBe(healthy);
});

test("the answer that led to the next position is taken back where it was given, any other where one is", () => {
  const log = well(two, "position 1");
  const next = movedOn(page(two), page(log));
  expect(wentBack(next, 0).view).toEqual({ screen: "position", position: "position 1" });
  const further = { ...next, log: at(log, "position 2", "left", "left ear") };
  expect(wentBack(further, 0).view).toBe(next.view);
});

test("that nobody is somewhere is taken back there; where it was asked for another's sake, nobody moves", () => {
  const log = add(two, { entry: "absent", position: "position 1" }, 0);
  const next: Page = { ...page(log), view: { screen: "position", position: "position 2" } };
  expect(wentBack(next, 0).view).toEqual({ screen: "position", position: "position 1" });
  const board: Page = { ...next, view: { screen: "board" } };
  expect(wentBack(board, 0).view).toBe(board.view);
  const wanted = at(stage(), "position 1", "left", "left ear");
  const other = page(add(wanted, { entry: "absent", position: "position 2" }, 0));
  expect(wentBack(other, 0).view).toBe(other.view);
});

import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { button, heading, open, openBench, press } from "../support/open.tsx";

afterEach(cleanup);

const logKey = "leftwright.log";
const alertText = () => document.querySelector("[role='alert']")?.textContent;

test("a reload in the middle loses nothing, sounds nothing, and goes on where one was", async () => {
  const { shelf, log } = open();
  await openBench(35);
  await press(/^1 host/);
  await press("Play");
  await press("middle");
  await expect.poll(() => log().length).toBe(2);
  expect(log()[1]).toMatchObject({ level: expect.any(Number) });
  const { player } = open({ shelf });
  expect(log()).toHaveLength(2);
  await press("Go on with the last session");
  await expect.element(button("Play")).toBeVisible();
  await expect.element(heading()).not.toHaveTextContent("Leftwright");
  expect(player.calls.filter(({ asked }) => asked === "play")).toEqual([]);
  await press("board");
  await expect.element(button(/^1 host, begun/)).toBeVisible();
  await press("lift the curtain");
  await expect.poll(() => document.body.textContent).toContain("rig number 35");
});

test("a second tap on a screen that was answered is no second answer", async () => {
  const { log } = open();
  await openBench(35);
  await press(/^1 host/);
  await press("Play");
  const middle = button("middle").element() as HTMLElement;
  for (let taps = 0; taps < 3; taps += 1) middle.click();
  await expect.poll(() => log().length).toBe(2);
  await new Promise((resolve) => setTimeout(resolve, 30));
  expect(log()).toHaveLength(2);
});

const drawing = { id: "1", at: 1, entry: "drawing", rig: straightIn };

test("the last session is offered by the name it was given, else by that of its rig", async () => {
  const shelf = createMemoryShelf();
  shelf.lay("plain", [drawing]);
  open({ shelf });
  const offered = () => document.querySelector(".go-on p")?.textContent;
  await expect.poll(offered).toContain(straightIn.name);
  shelf.lay("named", [drawing, { id: "2", at: 2, entry: "titled", name: "Sunday, second house" }]);
  await shelf.mark("named", (card) => ({ ...card, opened: 9 }));
  open({ shelf });
  await expect.poll(offered).toBe("Sunday, second house, nothing heard yet");
});

const older = (text: string) => createMemoryStorage({ texts: { [logKey]: text } });

describe("what an older program kept", () => {
  test("is gone on with, once", async () => {
    const texts = { [logKey]: JSON.stringify([drawing]), "leftwright.bench": "12 1" };
    const storage = createMemoryStorage({ texts });
    const { shelf } = open({ storage });
    await expect.element(button("Go on with the last session")).toBeVisible();
    await expect.poll(() => document.body.textContent).toContain("the rig without gear");
    expect(shelf.log()).toEqual([drawing]);
    expect(storage.getItem(logKey)).toBe(null);
    open({ storage, shelf });
    await expect.element(button("Go on with the last session")).toBeVisible();
    expect(await shelf.cards()).toMatchObject({ value: [{ session: "older 1" }] });
  });

  test("is mended where an entry is broken, and says so", async () => {
    const danced = { id: "2", at: 1, entry: "danced" };
    const storage = older(JSON.stringify([drawing, danced]));
    const { shelf } = open({ storage });
    await expect.poll(alertText).toContain("was left out");
    expect(shelf.log()).toEqual([drawing]);
    expect(storage.getItem("leftwright.unread")).toContain("danced");
  });

  test("goes on though the disk is full, and stays where it was", async () => {
    const storage = older(JSON.stringify([drawing]));
    const shelf = createMemoryShelf();
    shelf.refuse("full");
    open({ storage, shelf });
    await expect.element(button("Go on with the last session")).toBeVisible();
    expect(storage.getItem(logKey)).not.toBe(null);
  });

  test.each([
    "{",
    "null",
    "7",
    '[{"entry":"drawing"}]',
    '[{"id":"1","at":1,"entry":"danced"}]',
    '[{"id":"1","at":1,"entry":"drawing","rig":{"name":"x","parts":[{"id":1}],"plugged":[],"positions":[]}}]',
    '[{"id":"1","at":1,"entry":"drawing","rig":{"name":"x","parts":[],"plugged":[],"positions":[{"id":"a","name":"a","wears":"none"}]}}]',
  ])("is put away with a message: %s", async (text) => {
    const storage = older(text);
    open({ storage });
    await expect.poll(alertText).toContain("could not be understood");
    expect(document.body.textContent).not.toContain("Go on with the last session");
    expect(storage.getItem("leftwright.unread")).toBe(text);
  });
});

test("a full disk says so, the session goes on in memory, and all of it is kept once there is room", async () => {
  const { shelf, log } = open();
  shelf.refuse("full");
  await press("One person");
  await expect.poll(alertText).toContain("a reload would lose them");
  await press(/^1 you/);
  await press("Play");
  await press("middle");
  await expect.element(button("take the last answer back")).toBeVisible();
  expect(log()).toEqual([]);
  shelf.refuse(undefined);
  await press("Play");
  await press("middle");
  await expect.poll(() => log().map(({ id }) => id)).toEqual(["1", "2", "3"]);
  await expect.poll(alertText).toBe(undefined);
});

test.each([
  ["forbidden", "private window"],
  ["newer", "Reload the page"],
  ["blocked", "older copy"],
  ["failed", "could not write"],
] as const)("where it is %s the page says so and goes on", async (trouble, words) => {
  const shelf = createMemoryShelf();
  shelf.refuse(trouble);
  open({ shelf });
  await press("One person");
  await expect.poll(alertText).toContain(words);
  await expect.element(button(/^1 you/)).toBeVisible();
});

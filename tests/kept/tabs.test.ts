import { type BrowserContext, chromium as engine, type Page } from "playwright";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { chromium } from "#tests/support/chromium.ts";
import { type Served, serveBuilt } from "#tests/support/served.ts";
import { onTheDisk } from "./disk.ts";
import { pressNext } from "./presses.ts";

let served: Served;
let browser: Awaited<ReturnType<typeof engine.launch>>;
beforeAll(async () => {
  served = await serveBuilt(4512);
  browser = await engine.launch(await chromium());
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

let context: BrowserContext;
beforeEach(async () => {
  context = await browser.newContext({ reducedMotion: "reduce" });
});
afterEach(() => context.close());

async function opened(): Promise<Page> {
  const page = await context.newPage();
  await page.goto(served.url);
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page;
}

/** Presses what makes no sound and one entry, over and over: a first answer by ear. */
async function answer(page: Page): Promise<void> {
  for (;;) {
    const pressed = await pressNext(page, { anew: false, chance: 0.3 });
    if (pressed?.entry) return;
    if (pressed === undefined) await page.waitForTimeout(20);
  }
}

const begin = (page: Page) => page.getByRole("button", { name: "One person" }).click();
const goOn = (page: Page) =>
  page.getByRole("button", { name: "Go on with the last session" }).click();
const seat = (page: Page) => page.getByRole("button", { name: /^1 you/ }).click();
const follows = (page: Page) => page.getByText("Another tab writes this session");
const only = async (page: Page) => Object.values(await onTheDisk(page)).flat();
const ids = async (page: Page) => (await only(page)).map(({ entry }) => entry.id);

test("of two tabs one writes, the other follows, and writes when that one goes", async () => {
  const one = await opened();
  await begin(one);
  await seat(one);
  const two = await opened();
  await goOn(two);
  await follows(two).waitFor();
  await answer(one);
  await two.getByRole("button", { name: "take the last answer back" }).waitFor();
  expect(await ids(two)).toEqual(["1", "2"]);
  await two.getByRole("button", { name: "take the last answer back" }).click();
  expect(await ids(two), "a tab that follows enters nothing").toEqual(["1", "2"]);
  const crashing = await context.newCDPSession(one);
  void crashing.send("Page.crash").catch(() => undefined);
  await follows(two).waitFor({ state: "detached" });
  await two.getByRole("button", { name: "take the last answer back" }).click();
  await expect.poll(() => ids(two)).toEqual(["1", "2", "3"]);
});

test("the other takes over on a press, and the first follows then; nothing is doubled", async () => {
  const one = await opened();
  await begin(one);
  await seat(one);
  const two = await opened();
  await goOn(two);
  await two.getByRole("button", { name: "Write here" }).click();
  await follows(two).waitFor({ state: "detached" });
  await follows(one).waitFor();
  await answer(two);
  await one.getByRole("button", { name: "take the last answer back" }).waitFor();
  await one.getByRole("button", { name: "Write here" }).click();
  await follows(two).waitFor();
  await answer(one);
  await expect.poll(() => ids(two)).toEqual(["1", "2", "3"]);
});

test("without locks both may write, and the database lets no place be written twice", async () => {
  await context.addInitScript(() => {
    Object.defineProperty(navigator, "locks", { value: undefined });
    Object.defineProperty(globalThis, "BroadcastChannel", { value: undefined });
    Reflect.deleteProperty(globalThis, "BroadcastChannel");
  });
  const one = await opened();
  await begin(one);
  await seat(one);
  const two = await opened();
  await goOn(two);
  await two.locator(".board-screen, .ask").first().waitFor();
  await answer(one);
  await answer(two);
  await two.getByText("Another tab wrote to this session meanwhile").waitFor();
  expect(await ids(two)).toEqual(["1", "2"]);
  await two.getByRole("button", { name: "take the last answer back" }).waitFor();
});

test("a full disk says so, and once there is room nothing is missing", async () => {
  const page = await opened();
  const inside = await context.newCDPSession(page);
  const origin = new URL(served.url).origin;
  // Before anything is written: a browser asks for room now and then, not for each entry.
  await inside.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await begin(page);
  await page.getByText("The disk is full").waitFor();
  await seat(page);
  await answer(page);
  await page.getByRole("button", { name: "take the last answer back" }).waitFor();
  expect(await ids(page)).toEqual([]);
  await inside.send("Storage.overrideQuotaForOrigin", { origin });
  await answer(page);
  await expect.poll(() => ids(page)).toEqual(["1", "2", "3"]);
  await page.getByText("The disk is full").waitFor({ state: "detached" });
});

test("where the database is forbidden the page says so and goes on in memory", async () => {
  await context.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("not in this window", "SecurityError");
    };
  });
  const page = await opened();
  await begin(page);
  await page.getByText("This browser will not keep anything here").waitFor();
  await seat(page);
  await answer(page);
  await page.getByRole("button", { name: "take the last answer back" }).waitFor();
});

test("a database that is cleared away meanwhile is written again as a whole", async () => {
  const page = await opened();
  const inside = await context.newCDPSession(page);
  await begin(page);
  await seat(page);
  await answer(page);
  await inside.send("Storage.clearDataForOrigin", {
    origin: new URL(served.url).origin,
    storageTypes: "indexeddb",
  });
  await answer(page);
  await expect.poll(() => ids(page)).toEqual(["1", "2", "3"]);
});

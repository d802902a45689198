import type { Browser, Page } from "playwright";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { launched, stayedHome, type Visit, visit } from "./visits.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launched();
});
afterAll(() => browser.close());

let here: Visit;
let page: Page;
beforeEach(async () => {
  here = await visit(browser);
  page = here.page;
  await page.goto("about:blank");
  await page.goto(here.server.url);
});
afterEach(async () => {
  stayedHome(here);
  await here.close();
});

const press = (name: string | RegExp) => page.getByRole("button", { name }).first().click();
const stands = (name: string | RegExp) =>
  page.getByRole("heading", { level: 1, name }).waitFor({ timeout: 10_000 });
const atThePosition = () =>
  page.getByRole("button", { name: /^Play/ }).first().waitFor({ timeout: 10_000 });
const back = () => page.evaluate(() => history.back());
const forward = () => page.evaluate(() => history.forward());
/** How far in the browser believes to be, once it has got there. */
const places = (count: number) =>
  page.waitForFunction((count) => (history.state?.place ?? 0) === count, count);

test("from a position to the board, to the first screen, and only there out of the page", async () => {
  await press("Tallow Hall story evening");
  await press(/^3 fiddle/);
  await atThePosition();
  await places(2);
  await back();
  await stands(/position/);
  await back();
  await stands("Leftwright");
  expect(page.url()).toBe(here.server.url);
  await page.goBack();
  expect(page.url()).toBe("about:blank");
});

test("silences what sounds, as every way out of a screen does", async () => {
  await press("Tallow Hall story evening");
  await press(/^3 fiddle/);
  await press(/^Play/);
  await page.locator(".page.playing").waitFor();
  await back();
  await stands(/position/);
  await expect.poll(() => page.locator(".page.playing").count()).toBe(0);
});

test("the page's own way back leaves no place behind that leads nowhere", async () => {
  await press("Will it work, and which lead?");
  await places(1);
  await press("back");
  await stands("Leftwright");
  await places(0);
  await page.goBack();
  expect(page.url()).toBe("about:blank");
});

test("forward leads nowhere, and back afterwards as before", async () => {
  await press("Tallow Hall story evening");
  await press(/^3 fiddle/);
  await back();
  await stands(/position/);
  await forward();
  await places(1);
  await stands(/position/);
  await back();
  await stands("Leftwright");
});

test("a reload in the middle begins at the first screen, from which one step leaves", async () => {
  await press("Tallow Hall story evening");
  await press(/^3 fiddle/);
  await places(2);
  await page.reload();
  await stands("Leftwright");
  await places(0);
  await press("Go on with the last session");
  await atThePosition();
  await places(2);
  await back();
  await stands(/position/);
});

test("pressed twice before the first is drawn it goes back twice", async () => {
  await press("Tallow Hall story evening");
  await press(/^3 fiddle/);
  await places(2);
  await page.evaluate(() => {
    history.back();
    history.back();
  });
  await stands("Leftwright");
  await places(0);
});

test("places that are gone from the tab's history are made anew", async () => {
  await press("Tallow Hall story evening");
  await page.evaluate(() => history.replaceState({ place: 30 }, ""));
  await page.reload();
  await places(0);
  await press("Go on with the last session");
  await places(1);
  await back();
  await stands("Leftwright");
});

import { rm } from "node:fs/promises";
import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { goneWord, newer, newerBuild } from "./versions.ts";
import { inFlight, kept, launched, press, stayedHome, visit } from "./visits.ts";

let browser: Browser;
let folder: string;
beforeAll(async () => {
  [browser, folder] = await Promise.all([launched(), newerBuild()]);
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true });
});

const offered = (page: Page) => page.getByText("A newer version is here.");
const measuring = (page: Page) =>
  page.getByRole("heading", { name: "Measured here, or recorded elsewhere?" });

test("a newer version waits until it is asked for, through reloads and new windows", async () => {
  const one = await visit(browser);
  await one.page.goto(one.server.url);
  await kept(one.page);
  one.server.serve(folder);
  await one.page.reload();
  await offered(one.page).waitFor({ timeout: 20_000 });
  await press(one.page, "Measure with a sound card");
  await measuring(one.page).waitFor();
  await one.page.close();
  const page = await one.context.newPage();
  await page.goto(one.server.url);
  expect(await page.title()).toBe("Leftwright");
  await press(page, "Begin anew with it");
  await expect.poll(() => page.title()).toBe(newer);
  await inFlight(one);
  await page.reload();
  expect(await page.title()).toBe(newer);
  expect(await offered(page).count()).toBe(0);
  await press(page, "Measure with a sound card");
  await measuring(page).waitFor();
  stayedHome(one);
  await one.close();
});

test("a page that is still old goes on with its own files, also without a network", async () => {
  const one = await visit(browser);
  await one.page.goto(one.server.url);
  await kept(one.page);
  one.server.serve(folder);
  const other = await one.context.newPage();
  await other.goto(one.server.url);
  await press(other, "Begin anew with it");
  await expect.poll(() => other.title()).toBe(newer);
  await inFlight(one);
  expect(await one.page.title()).toBe("Leftwright");
  await press(one.page, "Measure with a sound card");
  await measuring(one.page).waitFor();
  // Words are no part of what a page is built of: their files have the same names in every version.
  const word = (page: Page) =>
    page.evaluate(async (path) => {
      const answer = await fetch(path);
      return [answer.status, (await answer.arrayBuffer()).byteLength > 1000];
    }, goneWord);
  expect(await word(one.page), "a word that the newer one has no more").toEqual([200, true]);
  await one.close();
});

test("what is not whole is never used: at the first visit, nor of a newer version", async () => {
  const one = await visit(browser);
  one.server.refuse(/two\.wav$/);
  await one.page.goto(one.server.url);
  await expect.poll(() => one.server.asked.some((path) => path.endsWith("two.wav"))).toBe(true);
  await one.page.reload();
  await press(one.page, /^Look and language/);
  await one.page.getByText("It is not on this device yet").waitFor();
  one.server.refuse(undefined);
  await one.page.reload();
  await kept(one.page);
  one.server.serve(folder);
  one.server.refuse(/inside-.*\.js$/);
  const { length } = one.server.asked;
  await one.page.reload();
  await expect
    .poll(() => one.server.asked.slice(length).some((path) => /inside-.*\.js$/.test(path)))
    .toBe(true);
  await inFlight(one);
  await one.page.reload();
  expect(await one.page.title()).toBe("Leftwright");
  expect(await offered(one.page).count()).toBe(0);
  await press(one.page, "One person");
  await one.page.getByRole("button", { name: /^1 you/ }).waitFor();
  await one.close();
});

test("a file that was thrown away is fetched again", async () => {
  const one = await visit(browser);
  await one.page.goto(one.server.url);
  await kept(one.page);
  const files = () =>
    one.page.evaluate(async () => {
      const names = (await caches.keys()).filter((name) => name.includes("version"));
      const lists = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return lists.flat().length;
    });
  const all = await files();
  await one.page.evaluate(async () => {
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys())
        if (/index-.*\.(js|css)$/.test(request.url))
          await (await caches.open(name)).delete(request);
  });
  expect(await files()).toBe(all - 2);
  await one.page.reload();
  await expect.poll(files).toBe(all);
  await inFlight(one);
  await one.page.reload();
  await one.page.getByRole("heading", { name: "Leftwright" }).waitFor();
  await one.close();
});

test("what lacks a file that does not come any more is not said to be here", async () => {
  const one = await visit(browser);
  await one.page.goto(one.server.url);
  await kept(one.page);
  one.server.refuse(/two\.wav$/);
  await one.page.evaluate(async () => {
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys())
        if (request.url.endsWith("two.wav")) await (await caches.open(name)).delete(request);
  });
  await one.page.reload();
  const told = await one.page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    return new Promise((resolve) => {
      navigator.serviceWorker.addEventListener("message", ({ data }) => resolve(data));
      active?.postMessage("here");
    });
  });
  expect(told).toEqual({ kept: false, newer: false });
  await press(one.page, /^Look and language/);
  await one.page.getByText("It is not on this device yet").waitFor();
  one.server.refuse(undefined);
  await one.page.reload();
  await kept(one.page);
  await one.close();
});

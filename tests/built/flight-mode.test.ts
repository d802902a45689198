import type { Browser, Page } from "playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { walk } from "#tests/robot/robot.ts";
import { prepare } from "#tests/robot/tap.ts";
import { inFlight, kept, launched, press, stayedHome, visit } from "./visits.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launched();
});
afterAll(() => browser.close());

const timeout = 120_000;

/** Goes round the page: spoken words, a worker, planning, measuring, a lead, the second language. */
async function round(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await press(page, "Tallow Hall story evening");
  await press(page, /^3 fiddle/);
  await press(page, /^say to them/);
  await page.locator(".page.playing").waitFor();
  await page.keyboard.press("Escape");
  await page.goto(url);
  await press(page, "Test sounds, to play or take away");
  await press(page, "Make the files");
  await page.locator("progress").waitFor();
  await page.waitForFunction(() => (document.querySelector("progress")?.value ?? 0) > 0);
  await page.goto(url);
  await press(page, "Will it work, and which lead?");
  await page.getByText("What is drawn gives it").waitFor();
  await page.goto(url);
  await press(page, "Measure with a sound card");
  await page.getByRole("heading", { name: "Measured here, or recorded elsewhere?" }).waitFor();
  await press(page, /^Look and language/);
  await press(page, "Deutsch");
  await page.reload();
  await press(page, /^Erzählabend/);
  await page.getByRole("heading", { level: 1, name: /Plätze/ }).waitFor();
  expect(await page.getByRole("alert").count()).toBe(0);
}

test("round the page with a network no request leaves its own place", { timeout }, async () => {
  const online = await visit(browser);
  await round(online.page, online.server.url);
  stayedHome(online);
  expect(online.asked.length).toBeGreaterThan(20);
  await online.close();
});

test("in flight mode, after one visit: a seat heard to its end, and round the page", {
  timeout,
}, async () => {
  const once = await visit(browser);
  const { page, server } = once;
  await prepare(page);
  await page.goto(server.url);
  await kept(page);
  await inFlight(once);
  const person = { url: server.url, rig: "One person", position: "1 you" };
  const walked = await walk(page, person);
  expect(walked.end, walked.text).toBe("healthy");
  await round(page, server.url);
  stayedHome(once);
  await once.close();
});

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium as engine } from "playwright";
import { build, type PreviewServer, preview } from "vite";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chromium } from "#tests/support/chromium.ts";
import { long } from "#tests/support/long.ts";
import type { Counts } from "./round-page.ts";

const rows = 4;
const kills = long ? 2000 : 200;
const timeout = long ? 1_800_000 : 300_000;

let browser: Browser;
let server: PreviewServer;
let folder = "";
beforeAll(async () => {
  const root = import.meta.dirname;
  folder = await mkdtemp(join(tmpdir(), "round-page-"));
  await build({
    configFile: join(root, "../../vite.config.ts"),
    root,
    publicDir: false,
    logLevel: "error",
    build: {
      outDir: folder,
      emptyOutDir: true,
      rolldownOptions: { input: join(root, "round-page.html") },
    },
  });
  server = await preview({
    configFile: false,
    root,
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 4470, strictPort: false },
    logLevel: "error",
  });
  browser = await engine.launch(await chromium());
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  await rm(folder, { recursive: true, force: true });
});

test(`killed ${kills} times at every step of a round, nothing is lost and nothing doubled`, {
  timeout,
}, async () => {
  const page = await browser.newPage();
  await page.goto(`${server.resolvedUrls?.local[0]}round-page.html`);
  await page.waitForFunction("globalThis.killing");
  const counts: Counts = await page.evaluate(`killing(${rows}, ${kills / rows})`);
  const steps = Object.entries(counts.steps).map(([step, count]) => `${step} ${count}`);
  console.log(
    `${kills} kills; shown before: ${steps.join(", ")}; ${counts.early} times a step was on the disk that nobody was shown`,
  );
  expect(counts.wrong).toEqual([]);
  const all = ["open", "begin", "left", "right", "pair", "move", "cannot", "take back"];
  expect(Object.keys(counts.steps)).toEqual(expect.arrayContaining(all));
});

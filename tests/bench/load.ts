import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium as engine, type Page } from "playwright";
import { serveFiles } from "#tests/built/server.ts";
import { chromium } from "#tests/support/chromium.ts";

/*
 * `npm run bench:load`: from the address to a first screen whose buttons answer, on a processor slowed down four times, by a network
 * and from the copy on the device; beside it a page that is one button, in the same run. `-- times slowed`
 */

const [, , times = "7", slowed = "4"] = process.argv;

/** Runs in the page before its own code: presses the button of the looks, or the only one there is, until it answers, and notes when it did. */
function pressEarly(): void {
  const tick = () => {
    const looks = document.querySelector<HTMLElement>("[aria-controls='look-strip']");
    const button = looks ?? document.querySelector<HTMLElement>("main > button");
    button?.click();
    requestAnimationFrame(() => {
      if (button?.getAttribute("aria-expanded") === "true")
        Object.assign(globalThis, { answered: performance.now() });
      else tick();
    });
  };
  document.addEventListener("DOMContentLoaded", tick);
}

/** A compiler may name functions by a function of its own, which the page lacks. */
const early = `globalThis.__name ??= (one) => one;(${pressEarly})()`;

/** Milliseconds until a button answered, in a page opened anew. */
async function opened(page: Page, url: string): Promise<number> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: Number(slowed) });
  await page.goto(url);
  const answered = await page.waitForFunction(() => Reflect.get(globalThis, "answered"));
  return Number(await answered.jsonValue());
}

/** A browser that was never here: one page in a context of its own, each time. */
async function firstVisit(browser: Browser, url: string): Promise<number> {
  const context = await browser.newContext();
  await context.addInitScript({ content: early });
  const time = await opened(await context.newPage(), url);
  await context.close();
  return time;
}

/** A browser that has its copy. */
async function laterVisits(browser: Browser, url: string): Promise<readonly number[]> {
  const context = await browser.newContext();
  await context.addInitScript({ content: early });
  const first = await context.newPage();
  await first.goto(url);
  await first.getByText("All of it is on this device").waitFor();
  await first.close();
  const found: number[] = [];
  for (let time = 0; time < Number(times); time++) {
    const page = await context.newPage();
    found.push(await opened(page, url));
    await page.close();
  }
  await context.close();
  return found;
}

const repeated = async (one: () => Promise<number>): Promise<readonly number[]> => {
  const found: number[] = [];
  for (let time = 0; time < Number(times); time++) found.push(await one());
  return found;
};

const middle = (all: readonly number[]): number =>
  all.toSorted((a, b) => a - b)[all.length >> 1] ?? 0;

const plain = `<!doctype html><title>one button</title>
<main><button aria-expanded="false" onclick="this.ariaExpanded = true">press</button></main>`;

const folder = await mkdtemp(join(tmpdir(), "plain-"));
await writeFile(join(folder, "index.html"), plain);
const [built, empty] = await Promise.all([serveFiles("dist"), serveFiles(folder)]);
const browser = await engine.launch(await chromium());
const rows = {
  "a page that is one button": await repeated(() => firstVisit(browser, empty.url)),
  "the first visit": await repeated(() => firstVisit(browser, built.url)),
  "from the copy": await laterVisits(browser, built.url),
};
await browser.close();
await Promise.all([built.stop(), empty.stop(), rm(folder, { recursive: true })]);

const least = middle(rows["a page that is one button"]);
console.log(`until a button answers, ${times} times each, a processor ${slowed} times slower:`);
for (const [name, all] of Object.entries(rows))
  console.log(
    `${name.padEnd(26)} middle ${middle(all).toFixed(0).padStart(5)} ms, worst ${Math.max(...all)
      .toFixed(0)
      .padStart(5)} ms, ${(middle(all) / least).toFixed(1)} times the plain one`,
  );

import { mkdirSync, rmSync } from "node:fs";
import { type BrowserContext, chromium as engine, type Page } from "playwright";
import { numberOf } from "#tests/browser/support/bench-player.ts";
import { serveFiles } from "#tests/built/server.ts";
import { chromium } from "#tests/support/chromium.ts";
import { type Look, others, themes } from "./looks.ts";
import { ways } from "./screens.ts";

/*
 * `npm run shots`: pictures of every screen of the built page, in every look, into `.shots`, for somebody to look at. What a look makes
 * wider than its window, or in the red one anything else than red, is said as well. Words after it choose looks: `-- dark light`.
 */

const folder = ".shots";
const [, , ...wanted] = process.argv;

interface Size {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly looks: readonly Look[];
  /** The size of letters that the browser is set to, pixels. */
  readonly letters?: number;
}

const chosen = (looks: readonly Look[]): readonly Look[] =>
  wanted.length === 0 ? looks : looks.filter(({ name }) => wanted.includes(name));

const sizes: readonly Size[] = [
  { name: "1280", width: 1280, height: 800, looks: chosen([...themes, ...others]) },
  { name: "390", width: 390, height: 844, looks: chosen([...themes, ...others]) },
  { name: "320", width: 320, height: 640, looks: chosen(themes.slice(0, 1)) },
  // As 1280 pixels are at 200 %, and with letters twice as large alone.
  { name: "640", width: 640, height: 400, looks: chosen(themes.slice(0, 1)) },
  {
    name: "large letters",
    width: 1280,
    height: 800,
    looks: chosen(themes.slice(0, 1)),
    letters: 32,
  },
];

const faults: string[] = [];

/** Whether what is painted has no blue and no green. */
async function isRed(page: Page, png: Buffer): Promise<boolean> {
  return page.evaluate(async (bytes) => {
    const picture = new Image();
    picture.src = `data:image/png;base64,${bytes}`;
    await picture.decode();
    const sheet = new OffscreenCanvas(picture.width, picture.height);
    const pen = sheet.getContext("2d");
    pen?.drawImage(picture, 0, 0);
    const { data = [] } = pen?.getImageData(0, 0, picture.width, picture.height) ?? {};
    return data.every((value, at) => at % 4 === 0 || at % 4 === 3 || value === 0);
  }, png.toString("base64"));
}

async function shoot(page: Page, size: Size, name: string): Promise<void> {
  for (const look of size.looks) {
    await look.on(page);
    await page.waitForTimeout(60);
    const called = `${name}, ${look.name}, ${size.name}`;
    // What stays in view while the page is scrolled would lie over the middle of the picture.
    await page.evaluate(() => scrollTo(0, 0));
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wide > 0) faults.push(`${called}: ${wide} pixels wider than the window`);
    const path = `${folder}/${called.replaceAll(/, | /g, "-")}.png`;
    const png = await page.screenshot({ path, fullPage: true });
    if (look.name === "red lamp" && !(await isRed(page, png))) faults.push(`${called}: not red`);
  }
  await themes[0]?.on(page);
}

async function walkAll(context: BrowserContext, url: string, size: Size, number: number) {
  for (const [at, way] of ways(number).entries()) {
    const page = await context.newPage();
    await page.goto(url);
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    let last = "the first screen";
    await way(page, async (name) => {
      await page.evaluate(() => Promise.all(document.getAnimations().map((one) => one.finished)));
      await shoot(page, size, name);
      last = name;
    }).catch((error: Error) =>
      faults.push(`way ${at} at ${size.name} stopped after ${last}: ${error.message}`),
    );
    await page.close();
  }
}

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const number = numberOf("headphones 4 / body / sleeve open");
const server = await serveFiles("dist");
const launch = await chromium();
for (const size of sizes.filter(({ looks }) => looks.length > 0)) {
  const letters = `--blink-settings=defaultFontSize=${size.letters ?? 16}`;
  const browser = await engine.launch({ ...launch, args: [...(launch.args ?? []), letters] });
  try {
    const context = await browser.newContext({
      viewport: size,
      reducedMotion: "reduce",
      colorScheme: "dark",
      serviceWorkers: "block",
      // Pictures are measured in the page, which lets nothing else in.
      bypassCSP: true,
    });
    await walkAll(context, server.url, size, number);
  } finally {
    await browser.close();
  }
}
await server.stop();
console.log(faults.length === 0 ? `all screens, in ${folder}` : faults.join("\n"));

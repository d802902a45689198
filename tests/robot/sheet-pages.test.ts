import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Log } from "#core/session/log.ts";
import { onPath } from "#tests/support/programs.ts";
import { evening, evenSaid } from "#tests/support/sessions.ts";
import { type BuiltPage, openBuiltPage } from "./built-page.ts";

/** Poppler reads what was printed; where it is not installed pages are counted and no more. */
const [text = "", picture = ""] = ["pdftotext", "pdftoppm"].map((one) => onPath(one));
const reader = text !== "" && picture !== "";
const folder = mkdtempSync(join(tmpdir(), "sheet-"));
let built: BuiltPage;

beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(async () => {
  await built.close();
  rmSync(folder, { recursive: true });
});

const formats = ["A4", "Letter"] as const;
const schemes = { A4: "dark", Letter: "light" } as const;
const presses = {
  "en-GB": { goOn: "Go on with the last session", theSheet: "the sheet" },
  "de-DE": { goOn: "Weiter mit der letzten Sitzung", theSheet: "das Blatt" },
};

type Printed = Readonly<Record<(typeof formats)[number], string>>;

/** The sheet of an evening as it comes out of the built page on either paper, out of a dark theme and a light one. */
async function printed(session: Log, locale: "en-GB" | "de-DE" = "en-GB"): Promise<Printed> {
  const context = await built.browser.newContext({ locale });
  const page = await context.newPage();
  const { goOn, theSheet } = presses[locale];
  const log = JSON.stringify(session);
  await page.addInitScript((text) => localStorage.setItem("leftwright.log", text), log);
  await page.goto(built.url);
  await page.getByRole("button", { name: goOn }).click();
  await page.getByRole("button", { name: theSheet, exact: true }).click();
  await page.locator("article").waitFor();
  const files = { A4: "", Letter: "" };
  for (const format of formats) {
    await page.emulateMedia({ colorScheme: schemes[format] });
    files[format] = join(folder, `${session.length} ${format}.pdf`);
    writeFileSync(files[format], await page.pdf({ format }));
  }
  await context.close();
  return files;
}

const pageCount = (file: string): number =>
  [...readFileSync(file, "latin1").matchAll(/\/Type\s*\/Page[^s]/g)].length;

/** The words of each page, in lines as they lie on it. */
const pagesOf = (file: string): readonly string[] =>
  execFileSync(text, ["-layout", file, "-"], { encoding: "utf8" }).split("\f").slice(0, -1);

/** Which share of a page's dots is white, and the darkest of all. */
function inkOf(file: string): { readonly white: number; readonly darkest: number } {
  const image = join(folder, "page");
  execFileSync(picture, ["-gray", "-r", "40", "-singlefile", file, image]);
  const bytes = readFileSync(`${image}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString("latin1", 0, 40));
  const dots = bytes.subarray(head?.[0].length ?? 0);
  expect(dots.length).toBe(Number(head?.[1]) * Number(head?.[2]));
  return {
    white: dots.filter((dot) => dot > 250).length / dots.length,
    darkest: dots.reduce((least, dot) => Math.min(least, dot), 255),
  };
}

test("eight positions stand on one page, with all there is to say", {
  timeout: 60_000,
}, async () => {
  for (const file of Object.values(await printed(evenSaid(8)))) {
    expect(pageCount(file)).toBe(1);
    if (!reader) continue;
    const [words = ""] = pagesOf(file);
    for (const said of [
      "Tallow Hall, Saturday soundcheck",
      "rig: Tallow Hall story evening",
      "4 of 8 positions healthy",
      "amplifier",
      "Nobody there",
      "Not heard",
      "Mended after: ",
      "Still there.",
      "Knobs on every way: laptop, phones at 8.0; mixer, phones at 5.0",
      "amplifier, output 8 at 4.1",
      "62 dB (47–74)",
      "1 host, hiss: ",
      "Since then: seen to:",
      "hiss, except at 1 host",
      "Both sides inverted together",
    ])
      expect(words).toContain(said);
    expect(words).toMatch(/\b1 ?\/ ?1\b/);
    for (const left of ["Print or save", "Silence", "to hand over"])
      expect(words).not.toContain(left);
    const { white, darkest } = inkOf(file);
    expect(white).toBeGreaterThan(0.8);
    expect(darkest).toBeLessThan(40);
  }
});

test("so they do in German, whose names are longer", { timeout: 60_000 }, async () => {
  for (const file of Object.values(await printed(evenSaid(8), "de-DE"))) {
    expect(pageCount(file)).toBe(1);
    if (!reader) continue;
    const [words = ""] = pagesOf(file);
    expect(words).toContain("Rauschen, außer bei: 1");
    expect(words).toContain("62 dB (47–74)");
  }
});

test("sixty-four go on over pages, each under the names of its columns, and no row is broken", {
  timeout: 60_000,
}, async () => {
  for (const file of Object.values(await printed(evening(64)))) {
    expect(pageCount(file)).toBe(3);
    if (!reader) continue;
    const pages = pagesOf(file);
    for (const page of pages.slice(1)) expect(page.trimStart()).toMatch(/^Position +Result +Worn/);
    const rows = pages.flatMap((page) =>
      page.split("\n").filter((line) => /^ *\d+ .* headphones\s\d+ .*(dBFS|–)$/.test(line)),
    );
    expect(rows.map((row) => Number.parseInt(row, 10))).toEqual(
      Array.from({ length: 64 }, (_, at) => at + 1),
    );
    const wrong = pages.find((page) => /^62 /m.test(page) && page.includes("Wrong"));
    expect(wrong).toContain("the return is lost in headphones 62");
  }
});

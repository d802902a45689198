import { chromium as engine } from "playwright";
import { writeFileSync } from "node:fs";
import { preview } from "vite";
import { chromium } from "#tests/support/chromium.ts";
import { evening } from "#tests/support/sessions.ts";
const [n = "8", ...views] = process.argv.slice(2);
const server = await preview({ configFile: false, root: "src", build: { outDir: "../dist" }, preview: { host: "127.0.0.1", port: 4571 }, logLevel: "error" });
const url = server.resolvedUrls?.local[0] as string;
const browser = await engine.launch(await chromium());
const log = JSON.stringify(evening(Number(n)));
for (const scheme of ["dark", "light"] as const) for (const [w, h] of [[1280, 800], [390, 844]] as const) for (const tongue of ["en-GB", "de-DE"]) {
  const ctx = await browser.newContext({ colorScheme: scheme, viewport: { width: w, height: h }, locale: tongue, timezoneId: "Europe/Berlin" });
  const page = await ctx.newPage();
  await page.addInitScript((text) => localStorage.setItem("leftwright.log", text), log);
  page.on("pageerror", (e) => console.log("error", e.message));
  await page.goto(url);
  const go = tongue.startsWith("en") ? /Go on with the last session/ : /Sitzung|Go on with the last/;
  await page.getByRole("button", { name: go }).first().click();
  await page.getByRole("button", { name: tongue.startsWith("en") ? "the sheet" : "das Blatt", exact: true }).click();
  await page.locator("article.sheet").waitFor();
  const name = `/tmp/h/sheet-${n}-${w}-${scheme}-${tongue.slice(0, 2)}`;
  if (tongue.startsWith("en") || (scheme === "dark" && w === 1280)) await page.screenshot({ path: `${name}.png`, fullPage: true });
  if (w === 1280 && scheme === "dark") for (const format of ["A4", "Letter"] as const) writeFileSync(`${name}-${format}.pdf`, await page.pdf({ format, preferCSSPageSize: false }));
  await ctx.close();
}
await browser.close(); await server.close();
process.exit(0);

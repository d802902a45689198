import { readFileSync } from "node:fs";
import { chromium as engine } from "playwright";
import { chromium } from "#tests/support/chromium.ts";

/*
 * `npm run icons`: the icons that devices want as pixels, from `public/icon.svg`. The whole one fills its square, with the drawing within
 * the middle four fifths, since devices cut it to a shape of their own.
 */

const drawing = readFileSync("public/icon.svg", "utf8");
const ground = /<rect [^>]*fill="([^"]+)"/.exec(drawing)?.[1] ?? "";

const icons = [
  { name: "icon-180", size: 180, share: 0.9 },
  { name: "icon-192", size: 192, share: 1 },
  { name: "icon-512", size: 512, share: 1 },
  { name: "icon-whole", size: 512, share: 0.8 },
] as const;

const browser = await engine.launch(await chromium());
for (const { name, size, share } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const behind = share === 1 ? "" : `background: ${ground};`;
  await page.setContent(
    `<body style="margin: 0; display: grid; place-items: center; height: 100vh; ${behind}">
      ${drawing.replace("<svg", `<svg width="${size * share}"`)}`,
  );
  await page.screenshot({ path: `public/${name}.png`, omitBackground: true });
  await page.close();
}
await browser.close();

import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { add } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { open, press } from "../support/open.tsx";

afterEach(cleanup);

const long = [
  "host",
  "second reader by the window",
  "the bell ringer, who stands behind the curtain all evening",
  "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWW MMMMMMMMMM",
  "die Übersetzerin für Gebärdensprache",
  "第二朗読者は窓のそばに立っていますのでよろしく",
  "قارئ ثان يجلس بجانب النافذة طوال المساء هنا",
];

test.each([
  ["few seats", long],
  ["many", Array.from({ length: 40 }, (_, at) => long[at % long.length] ?? "")],
])("names in the drawing end within it: %s", async (_, seats) => {
  const shelf = createMemoryShelf();
  const rig = fromHeadphoneSocket("Tallow Hall story evening", seats);
  shelf.lay("long", add([], { entry: "drawing", rig }, 0));
  open({ shelf });
  await press("Go on with the last session");
  await press("the sheet");
  await expect.element(tab.getByRole("article")).toBeVisible();
  const drawing = document.querySelector<SVGSVGElement>(".sheet-rig");
  const names = [...(drawing?.querySelectorAll<SVGTextElement>(".seat-name") ?? [])];
  const texts = names.map(({ textContent }) => textContent);
  const { x = 0, width = 0 } = drawing?.viewBox.baseVal ?? {};
  const ends = names.map((name) => name.getBBox().x + name.getBBox().width);
  expect(names).toHaveLength(seats.length);
  expect(Math.max(...ends), `${texts} end at ${ends}`).toBeLessThanOrEqual(x + width);
  expect(texts[0]).toBe("1 host");
  expect(texts[2]).toMatch(/^3 the bell ringer.*…$/);
  expect(texts.filter((text) => text?.endsWith("…")).length).toBeGreaterThanOrEqual(3);
});

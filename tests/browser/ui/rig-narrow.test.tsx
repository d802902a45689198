import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { press } from "../support/open.tsx";
import { openRig, startOf, thing } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

/** What stands out of its own button or line, by its words. */
const standingOut = (which: string): readonly string[] =>
  [...document.querySelectorAll<HTMLElement>(which)].flatMap((one) => {
    const range = document.createRange();
    range.selectNodeContents(one);
    const [words, own] = [range.getBoundingClientRect(), one.getBoundingClientRect()];
    const within = words.left >= own.left - 1 && words.right <= own.right + 1;
    return own.width === 0 || within ? [] : [one.textContent ?? ""];
  });

const overflow = () => document.documentElement.scrollWidth - innerWidth;

/** In how many lines the words of an element stand. */
const linesOf = (one: Element): number => {
  const range = document.createRange();
  range.selectNodeContents(one);
  return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
};

test.each([
  [320, 640],
  [390, 844],
  [1280, 800],
] as const)("German words stay in their places at %i", async (width, height) => {
  await tab.viewport(width, height);
  await openRig(startOf("podcast table"), "de");
  await tab.getByText("alles, was es gibt").click();
  expect(standingOut(".kind")).toEqual([]);
  expect(overflow()).toBeLessThanOrEqual(0);
  await thing("Verstärker, Kopfhörer").click();
  await press("ändern");
  await tab.getByText("Daten: Kopfhörer").click();
  const labels = [...document.querySelectorAll(".number-set label")];
  expect(labels.map((one) => one.textContent)).toContain("Eingangswiderstand je Seite");
  expect(labels.filter((one) => linesOf(one) > 1).map((one) => one.textContent)).toEqual([]);
  expect(overflow()).toBeLessThanOrEqual(0);
});

test("a thing added in German has a name without the places where its kind may be broken", async () => {
  await tab.viewport(1280, 800);
  await openRig(startOf("podcast table"), "de");
  await thing(/^Kopfhörerverstärker$/).click();
  await press("vor Kopfhörer 2, in Ausgang 2 von Verstärker");
  const drawn = thing(/^Kopfhörerverstärker, Kopfhörerverstärker/);
  await expect.element(drawn).toBeVisible();
  expect(drawn.element().getAttribute("data-thing")).toBe("part\nKopfhörerverstärker");
});

test.each([320, 390, 1280])("a name without a blank does not widen the page: %i", async (width) => {
  await tab.viewport(width, 800);
  const rig = startOf("podcast table");
  const long = "W".repeat(80);
  const named = {
    ...rig,
    parts: rig.parts.map((part) => (part.id === "amplifier" ? { ...part, id: long } : part)),
    plugged: rig.plugged.map((end) => (end.into === "amplifier" ? { ...end, into: long } : end)),
    positions: rig.positions.map((seat, at) => (at === 0 ? { ...seat, name: long } : seat)),
  };
  await openRig(named);
  expect(overflow()).toBeLessThanOrEqual(0);
  expect(standingOut(".rig-picture .tape")).toEqual([]);
  await thing(`${long}, position`).click();
  expect(overflow()).toBeLessThanOrEqual(0);
  await press("name");
  const field = tab.getByLabelText("What stands on its tape");
  await expect.element(field).toHaveAttribute("maxlength", "80");
});

import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { button, heading, open, press } from "../support/open.tsx";

/** The page as it would stand in a language that is written from the right: the page says itself which way its own is. */
async function openTurned() {
  open();
  await expect.element(heading()).toBeVisible();
  document.documentElement.dir = "rtl";
}

afterEach(() => {
  cleanup();
  document.documentElement.dir = "ltr";
});

const box = (one: Element) => one.getBoundingClientRect();
const all = (which: string) => [...document.querySelectorAll(which)];

test("where words run from the right, Silence is in the other corner and nothing overflows", async () => {
  await openTurned();
  const silence = box(button(/^Silence/).element());
  expect(silence.left).toBeLessThan(innerWidth - silence.right);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(innerWidth);
});

test("a lead is drawn as it lies: the names of contacts stand beside their dots, not over them", async () => {
  await openTurned();
  await press("Prove a lead");
  await press(/^stereo jack three/);
  await press(/^two mono jacks/);
  await expect.element(heading()).toHaveTextContent("What should it be?");
  const rows = all(".pin-drawing g").filter((one) => one.querySelector(":scope > .pin + .gets"));
  expect(rows.length).toBeGreaterThan(5);
  for (const row of rows) {
    const [dot, name] = [...row.children].map(box);
    if (dot === undefined || name === undefined) throw new Error("a row without its name");
    const middle = (dot.left + dot.right) / 2;
    expect(middle < name.left || middle > name.right).toBe(true);
  }
});

test("the plan keeps its left: what one has, then what it goes into, and names within their boxes", async () => {
  await openTurned();
  await press("Will it work, and which lead?");
  await expect.element(heading()).toHaveTextContent("Before you plug in");
  const [from, into] = [".name.from", ".name.into"].map((one) => all(one).map(box)[0]);
  expect(from?.left ?? 0).toBeLessThan(into?.left ?? 0);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(innerWidth);
});

import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clean, ill } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(async () => {
  cleanup();
  await cdp().send("Emulation.setEmulatedMedia", { features: [] });
});

const look = /^Look and language/;
const { documentElement: root } = document;
const emulated = (...features: readonly { readonly name: string; readonly value: string }[]) =>
  cdp().send("Emulation.setEmulatedMedia", { features: [...features] });
const seen = (name: string, of: Element = document.body) =>
  getComputedStyle(of).getPropertyValue(name);

test("a theme is chosen in place, kept, and told to the browser's own bar", async () => {
  await tab.viewport(390, 844);
  const bar = document.createElement("meta");
  bar.name = "theme-color";
  document.head.append(bar);
  const { storage } = open();
  await press(look);
  await clean("start, look");
  await press("red, for a dark stage");
  await expect.poll(() => root.dataset.theme).toBe("red lamp");
  expect(seen("background-color")).toBe("rgb(0, 0, 0)");
  expect(bar.content).toBe("#000");
  open({ storage });
  await expect.poll(() => root.dataset.theme).toBe("red lamp");
  await press(look);
  await expect.element(button("red, for a dark stage")).toHaveAttribute("aria-pressed", "true");
  bar.remove();
});

test("by the system it follows the system, also while it is open", async () => {
  await emulated({ name: "prefers-color-scheme", value: "light" });
  open();
  await expect.poll(() => root.dataset.theme).toBe("light");
  await emulated({ name: "prefers-color-scheme", value: "dark" });
  await expect.poll(() => root.dataset.theme).toBe("dark");
});

test("the language is chosen there too, by its own name, and said to screen readers", async () => {
  open();
  await press(look);
  await press("Deutsch");
  await expect.element(button("Stille")).toBeVisible();
  await expect.poll(() => root.lang).toBe("de");
});

test("the strip is opened, used and closed by keys alone, and goes with its screen", async () => {
  open();
  button(look).element().focus();
  await keys("{Enter}");
  await expect.element(button(look)).toHaveAttribute("aria-expanded", "true");
  await keys("{Tab}{Tab}{Tab}");
  expect(document.activeElement?.textContent).toBe("light, for daylight");
  await keys("{Enter}");
  await expect.poll(() => root.dataset.theme).toBe("light");
  await press("One person");
  await expect.element(heading()).toHaveTextContent("1 position to check");
  await expect.element(button(look)).toHaveAttribute("aria-expanded", "false");
});

test("installing is offered where the browser offers it, else told in words", async () => {
  const { copy } = open();
  await press(look);
  expect(document.body.textContent).toContain("It is not on this device yet");
  copy.change({ kept: true });
  await expect.poll(() => document.body.textContent).toContain("Add to Home Screen");
  copy.change({ installable: true });
  await press("Install it on this device");
  expect(copy.asked).toEqual(["install"]);
});

test("with more contrast asked for every screen to an answer is clean, and has no faded letters", async () => {
  await emulated({ name: "prefers-contrast", value: "more" });
  open();
  await clean("start");
  await press("One person");
  await clean("board");
  expect(seen("--dim")).toBe(seen("--text"));
  await press(/^1 you/);
  await press("Play");
  await expect.element(button("middle")).toBeVisible();
  await clean("question");
});

test("with the system's own colours drawings take them, and what has the focus is seen", async () => {
  await emulated({ name: "forced-colors", value: "active" });
  open();
  const [lane] = document.querySelectorAll(".lane.left");
  const ground = seen("background-color");
  if (lane === undefined) throw new Error("there is no lane");
  expect(seen("stroke", lane)).toBe(seen("color"));
  expect(seen("stroke", lane)).not.toBe(ground);
  const main = button("A rig to try without gear").element();
  main.focus();
  await keys("{Shift>}{Tab}{/Shift}{Tab}");
  expect(document.activeElement).toBe(main);
  expect(seen("outline-style", main)).toBe("solid");
  expect(seen("border-top-style", main)).toBe("solid");
  expect(seen("clip-path", main)).toBe("none");
});

test("control: letters too dim for the red lamp are found", async () => {
  open();
  const dim = document.createElement("p");
  dim.textContent = "too dim";
  dim.style.color = "#800000";
  document.querySelector("main")?.append(dim);
  expect((await ill("red lamp")).join()).toContain("too dim");
});

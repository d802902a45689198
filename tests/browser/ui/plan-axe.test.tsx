import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { open, press } from "../support/open.tsx";

afterEach(cleanup);

const advice = () =>
  expect.poll(() => document.querySelector(".plan-advice")?.textContent, { timeout: 8000 });

/** Names on the picture that lie over one another. */
function crowded(): readonly string[] {
  const names = [...document.querySelectorAll<HTMLElement>(".plan-stage .name")];
  const boxes = names.map((one) => ({ text: one.textContent, box: one.getBoundingClientRect() }));
  return boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter(
        ({ box }) =>
          box.left < one.box.right &&
          one.box.left < box.right &&
          box.top < one.box.bottom &&
          one.box.top < box.bottom,
      )
      .map((other) => `${one.text} lies over ${other.text}`),
  );
}

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    ["wide", 1280, 800],
    ["narrow", 390, 844],
  ] as const)("every state is accessible, and nothing is crowded: %s", async (_, width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    open();
    await press("Will it work, and which lead?");
    await advice().toContain("What is drawn gives it");
    await clean("first plan");
    expect(crowded()).toEqual([]);
    for (const one of document.querySelectorAll<HTMLElement>(".plan button")) {
      const box = one.getBoundingClientRect();
      expect(Math.min(box.width, box.height), one.outerHTML).toBeGreaterThanOrEqual(44);
    }
    await press(/^main left,/);
    await advice().toContain("What is inside");
    await clean("asks for the stage");
    await press(/^actively balanced/);
    await advice().toContain("Use this one");
    await clean("a lead to take");
    expect(crowded()).toEqual([]);
    await press("small mixer");
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("tray of boxes");
    await press("stereo jack lead");
    await clean("tray of leads");
    await press("put away");
    await press("headphone amplifier");
    await press(/^headphones a stereo plug/);
    await press("small mixer");
    await press(/^loudspeaker amplifier/);
    await clean("harm");
  });
});

import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { field, openLevels } from "../support/levels.ts";
import { press } from "../support/open.tsx";
import { startOf } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

test.each([
  ["wide", 1280, 800],
  ["narrow", 390, 844],
  ["small", 320, 640],
] as const)("accessible, and no wider than the window: %s", async (_, width, height) => {
  const features = [{ name: "prefers-reduced-motion", value: "reduce" }];
  await cdp().send("Emulation.setEmulatedMedia", { features });
  await tab.viewport(width, height);
  await openLevels(startOf("stage in-ears"));
  for (const one of document.querySelectorAll<HTMLDetailsElement>(".levels details"))
    one.open = true;
  await press(/^numbers of in-ears/);
  await expect.element(field("sensitivity")).toBeVisible();
  await clean("levels");
});

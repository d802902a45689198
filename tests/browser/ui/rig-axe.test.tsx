import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { press } from "../support/open.tsx";
import { openRig, startOf, thing } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

/** Everything that is pressed is large enough for a thumb. */
function smallOnes(): readonly string[] {
  return [...document.querySelectorAll<HTMLElement>(".rig-screen button")].flatMap((one) => {
    const { width, height } = one.getBoundingClientRect();
    return width === 0 || Math.min(width, height) >= 44 ? [] : [one.outerHTML];
  });
}

test.each([
  ["dark", "wide", 1280, 800],
  ["dark", "narrow", 390, 844],
  ["dark", "small", 320, 640],
  ["light", "wide", 1280, 800],
  ["light", "narrow", 390, 844],
] as const)("the rig and what may be done to it: %s, %s", async (scheme, _, width, height) => {
  const features = [
    { name: "prefers-color-scheme", value: scheme },
    { name: "prefers-reduced-motion", value: "reduce" },
  ];
  await cdp().send("Emulation.setEmulatedMedia", { features });
  await tab.viewport(width, height);
  await openRig(startOf("stage in-ears"));
  await clean("the rig");
  expect(smallOnes()).toEqual([]);
  await thing(/in phones of belt pack 2/).click();
  await press("put something in the way");
  await clean("what goes in the way");
  expect(smallOnes()).toEqual([]);
});

import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Rig } from "#core/rig/rig.ts";
import { add } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { heading, open, press } from "../support/open.tsx";
import { startOf } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

function ofSeats(count: number): Rig {
  let rig = startOf(count < 12 ? "rehearsal room" : "classroom");
  while (rig.positions.length < count) {
    const copy = positionCopied(rig, rig.positions.at(-1)?.id ?? "");
    if ("refusal" in copy) throw new Error(copy.refusal.refused);
    rig = copy.rig;
  }
  return rig;
}

/** Whether a lane runs through what is written or pressed under the board. */
function crossed(): readonly string[] {
  const points = [...document.querySelectorAll<SVGGeometryElement>(".lanes path")].flatMap((path) =>
    Array.from({ length: 60 }, (_, at) => {
      const point = path.getPointAtLength((path.getTotalLength() * at) / 59);
      return point.matrixTransform(path.getScreenCTM() ?? undefined);
    }),
  );
  expect(points.length).toBeGreaterThan(60);
  return [...document.querySelectorAll(".foot button, .foot .dim, .foot p")].flatMap((one) => {
    const { left, right, top, bottom } = one.getBoundingClientRect();
    const isOn = ({ x, y }: DOMPoint) => x > left && x < right && y > top && y < bottom;
    return points.some(isOn) ? [one.textContent ?? ""] : [];
  });
}

test.each([6, 12, 17])(
  "what stands under a board of %i is not written over its lanes",
  async (count) => {
    await tab.viewport(1280, 800);
    const log = add([], { entry: "drawing", rig: ofSeats(count) }, 0);
    open({ storage: createMemoryStorage({ texts: { "leftwright.log": JSON.stringify(log) } }) });
    await press("Go on with the last session");
    await expect.element(heading()).toHaveTextContent(`${count} positions to check`);
    await expect.element(tab.getByText("All at once, hands up")).toBeVisible();
    expect(crossed()).toEqual([]);
  },
);

import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Rig } from "#core/rig/rig.ts";
import { drawnIn, openRig, seatsIn, startOf } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });

/** A podcast table of 64. */
function large(): Rig {
  let rig = startOf("podcast table");
  while (rig.positions.length < 64) {
    const edited = positionCopied(rig, rig.positions.at(-1)?.id ?? "");
    if ("refusal" in edited) throw new Error(edited.refusal.refused);
    rig = edited.rig;
  }
  return rig;
}

const taps = () => [...document.querySelectorAll<HTMLElement>(".rig-tap")];
const middle = (element: Element) => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return { clientX: left + width / 2, clientY: top + height / 2 };
};

function pointer(type: string, element: EventTarget, at: { clientX: number; clientY: number }) {
  const more = { pointerId: 7, isPrimary: true, button: 0, bubbles: true, cancelable: true };
  element.dispatchEvent(new PointerEvent(type, { ...more, ...at }));
}

/** What one thing took, with the layout it asks for, in milliseconds. */
function timed(what: () => void): number {
  const begun = performance.now();
  what();
  document.body.getBoundingClientRect();
  return performance.now() - begun;
}

const median = (all: readonly number[]): number =>
  all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0;

describe.each([
  ["wide", 1280, 800],
  ["narrow", 390, 844],
] as const)("64 positions, %s", (name, width, height) => {
  test("are a run of taps; while one is dragged nothing is drawn anew or measured again, and it is entered where it is dropped", async () => {
    await tab.viewport(width, height);
    const { log } = await openRig(large());
    expect(taps()).toHaveLength(64);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    const [first, , third] = taps();
    if (first === undefined || third === undefined) throw new Error("there are no taps");
    const [from, to] = [middle(first), middle(third)];
    pointer("pointerdown", first, from);
    const begins = timed(() =>
      pointer("pointermove", window, { ...from, clientX: from.clientX + 9 }),
    );
    const rects = vi.spyOn(Element.prototype, "getBoundingClientRect");
    const changes = new MutationObserver(() => {});
    changes.observe(document.body, { subtree: true, childList: true, attributes: true });
    const moves = Array.from({ length: 200 }, (_, at) => {
      const along = (at + 1) / 200;
      const between = (a: number, b: number) => a + (b - a) * along;
      return timed(() =>
        pointer("pointermove", window, {
          clientX: between(from.clientX, to.clientX),
          clientY: between(from.clientY, to.clientY),
        }),
      );
    });
    const measured = rects.mock.calls.length - moves.length; // one each by `timed`
    rects.mockRestore();
    const changed = changes.takeRecords();
    changes.disconnect();
    const drops = timed(() => pointer("pointerup", window, to));
    await expect.poll(() => seatsIn(drawnIn(log()))[0]).toBe("1 host: amplifier, output 3");
    console.log(
      `${name}: begins ${begins.toFixed(1)} ms, a move ${median(moves).toFixed(2)} ms (most ${Math.max(...moves).toFixed(1)}), drops ${drops.toFixed(1)} ms`,
    );
    expect(measured).toBe(0);
    expect(changed.length).toBeLessThan(2 * moves.length);
    expect(
      changed.every(({ target }) =>
        (target as Element).matches(".ghost, [data-spot], [data-thing]"),
      ),
    ).toBe(true);
    // Fifty is the aim for the longest; on a busy machine the middle of them is held to it.
    expect(median(moves)).toBeLessThan(50);
    expect(log()).toHaveLength(2);
  });
});

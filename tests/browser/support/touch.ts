import { cdp } from "vitest/browser";

/** A finger that taps twice at the middle of something, quicker than anybody reads. */
export async function doubleTap(place: Element): Promise<void> {
  place.scrollIntoView({ block: "center", behavior: "instant" });
  const { left, top, width, height } = place.getBoundingClientRect();
  const outer = window.frameElement?.getBoundingClientRect() ?? { left: 0, top: 0, width: 0 };
  const scale = outer.width / innerWidth || 1;
  const x = outer.left + (left + width / 2) * scale;
  const y = outer.top + (top + height / 2) * scale;
  for (const touchPoints of [[{ x, y }], [], [{ x, y }], []])
    await cdp().send("Input.dispatchTouchEvent", {
      type: touchPoints.length > 0 ? "touchStart" : "touchEnd",
      touchPoints,
    });
}

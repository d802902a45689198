import { bent, boxOf, plugPlace } from "./plan-boxes.ts";
import type { PlanCounts, PlanShape } from "./plan-shape.ts";

const [width, top, scale] = [340, 20, 0.68];
/** Where the cable turns, at the right and at the left of the screen, and between them its straight run. */
const [east, west, a, b] = [306, 26, 262, 76];
const adapter = 46;

/** From above: what one has, the lead in an S, what it goes into beside the ears. */
export function planDown(counts: PlanCounts): PlanShape {
  const straight = counts.inputs === 0;
  const from = boxOf([2, top], 186, "east", { count: counts.outputs, row: 45, least: 120 });
  const level = top + from.height + 36 + counts.nearAdapters * adapter;
  const below = level + 98 + counts.farAdapters * adapter;
  const into = boxOf([134, below], 92, "west", { count: counts.inputs, row: 45, least: 172 });
  const cupLevel = below + (straight ? 56 : into.height / 2 + 20);
  return {
    wide: false,
    width,
    height: cupLevel + 142,
    scale,
    from,
    ...(straight ? {} : { into }),
    middle: { at: (along, t) => `${a - along} ${level - t}`, length: a - b },
    near: ([x, y], t) =>
      bent([
        [x, y],
        [east - t, y],
        [east - t, level - t],
        [a, level - t],
      ]),
    far: ([x, y], t) =>
      bent([
        [b, level - t],
        [west - t, level - t],
        [west - t, y],
        [x, y],
      ]),
    plugAt: plugPlace(13, scale),
    adapters: { near: [east, level - 52], far: [west, level + 52], step: adapter },
    leadName: [168, level + 42],
    cups: [
      [288, cupLevel - 38],
      [288, cupLevel + 38],
    ],
    intoName: straight ? [130, cupLevel + 106] : [into.x + into.width / 2 - 20, into.y - 4],
    wornName: [266, cupLevel + 116],
  };
}

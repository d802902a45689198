import type { FlexFault, FlexLimit, FlexReturn } from "./flex-names.ts";
import type { FlexReading } from "./flex-reading.ts";
import { dimensions, place } from "./flex-record.ts";

/** How much the sides fall, and what comes over from each, in phase or in antiphase. */
type Shape = readonly [left: number, right: number, leftOver: number, rightOver: number];

/** What a whole fault does: the two-by-two matrix less the healthy one (handbook, section 5). */
const shapes: Readonly<Record<FlexFault, Shape>> = {
  tip: [1, 0, 0, 0],
  ring: [0, 1, 0, 0],
  "tip and ring": [1, 1, 0, 0],
  sleeve: [1, 1, -1, -1],
  "tip to ring": [1, 1, 1, 1],
  mixed: [1, 1, 1, 1],
};

/** How much of a deviation's square a fault must explain. Noise that comes in at one frequency explains half of it at best. */
export const enough = 0.6;

/** What may be named, by what is seen. */
export function nameable(limits: readonly FlexLimit[], to: FlexReturn): readonly FlexFault[] {
  const both = to === "joined" ? "tip to ring" : "mixed";
  if (limits.includes("left only")) return ["tip", both];
  if (limits.includes("right only")) return ["ring", both];
  if (limits.includes("one input")) return ["tip", "ring", "tip and ring"];
  return ["tip", "ring", "tip and ring", "sleeve", "tip to ring"];
}

/** The fault that explains a mean deviation best, and which part of its square. */
export function explained(
  mean: Float64Array,
  reading: FlexReading,
  faults: readonly FlexFault[],
): { readonly fault: FlexFault; readonly part: number } {
  const found = shapeOf(mean, reading);
  const seen = reading.sides.map(({ side }) =>
    [side.own, side.across].map((at) => at !== undefined),
  );
  const mask = [seen[0]?.[0], seen[1]?.[0], seen[0]?.[1], seen[1]?.[1]];
  const square = mean.subarray(0, dimensions).reduce((sum, one) => sum + one * one, 0);
  const parts = faults.map((fault) => {
    const shape = shapes[fault].map((one, at) => (mask[at] ? one : 0));
    const along = shape.reduce((sum, one, at) => sum + one * (found[at] ?? 0), 0);
    const long = shape.reduce((sum, one) => sum + one * one, 0);
    return { fault, part: along > 0 ? along ** 2 / (long * square) : 0 };
  });
  return parts.reduce((best, one) => (one.part > best.part ? one : best), {
    fault: faults[0] ?? "tip",
    part: 0,
  });
}

function shapeOf(mean: Float64Array, { sides }: FlexReading): Shape {
  const fall = (which: 0 | 1) => 1 - (mean[place.level + which] ?? 1);
  const over = (which: 0 | 1) =>
    [0, 1].reduce(
      (sum, tone) =>
        sum + (sides[which].weights[tone] ?? 0) * (mean[place.over + 4 * which + 2 * tone] ?? 0),
      0,
    );
  return [fall(0), fall(1), over(0), over(1)];
}

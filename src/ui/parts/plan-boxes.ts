import type { BoxShape, PlugPlace, Point } from "./plan-shape.ts";

/** How long a plug is drawn at full size, from its tip to the end of its boot. */
const plugLength = 98;

/** A box with so many sockets down one edge, the first one under its name. */
export function boxOf(
  [x, y]: Point,
  width: number,
  edge: "west" | "east",
  rows: { readonly count: number; readonly row: number; readonly least: number },
): BoxShape {
  const height = Math.max(rows.count * rows.row + 44, rows.least);
  const first = y + (height - (rows.count - 1) * rows.row) / 2 + 11;
  return {
    x,
    y,
    width,
    height,
    sockets: Array.from(
      { length: rows.count },
      (_, index): Point => [edge === "east" ? x + width : x, first + index * rows.row],
    ),
  };
}

/** A plug in front of a socket, so that its contacts are seen. */
export const plugPlace =
  (gap: number, scale: number) =>
  ([x, y]: Point, facing: "west" | "east"): PlugPlace => {
    const away = facing === "west" ? 1 : -1;
    return { tip: [x + away * gap, y], end: [x + away * (gap + plugLength * scale), y] };
  };

export const meanOf = (all: readonly number[], otherwise: number): number =>
  all.length === 0 ? otherwise : all.reduce((sum, one) => sum + one, 0) / all.length;

/** A line along straight stretches with its corners rounded. */
export function bent(points: readonly Point[], radius = 22): string {
  const corners = points.slice(1, -1).map((corner, index) => {
    const [before, after] = [points[index] ?? corner, points[index + 2] ?? corner];
    return `L${toward(corner, before, radius)} Q${corner.join(" ")} ${toward(corner, after, radius)}`;
  });
  return `M${points[0]?.join(" ")} ${corners.join(" ")} L${points.at(-1)?.join(" ")}`;
}

/** A point so far from one towards another, or halfway where that is nearer. */
function toward([x, y]: Point, [toX, toY]: Point, distance: number): string {
  const [dx, dy] = [toX - x, toY - y];
  const whole = Math.max(Math.hypot(dx, dy), 1e-6);
  const by = Math.min(distance, whole / 2) / whole;
  return `${x + dx * by} ${y + dy * by}`;
}

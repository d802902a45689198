/** A point of a drawing: `along` the way from the source, `across` it, the left lane's side negative. As SVG writes it. */
export type Place = (along: number, across: number) => string;

export const eastward =
  (x: number, y: number): Place =>
  (along, across) =>
    `${x + along} ${y + across}`;

/** Seen from above by somebody who faces the source: left stays left. */
export const southward =
  (x: number, y: number): Place =>
  (along, across) =>
    `${x + across} ${y + along}`;

export const westward =
  (x: number, y: number): Place =>
  (along, across) =>
    `${x - along} ${y + across}`;

/** A straight line along the way. */
export const straightOn = (at: Place, from: number, to: number, across: number): string =>
  `M${at(from, across)} L${at(to, across)}`;

/** From one line to another, leaving and arriving along the way. */
export function sway(
  at: Place,
  from: readonly [number, number],
  to: readonly [number, number],
): string {
  const middle = (from[0] + to[0]) / 2;
  return `M${at(...from)} C${at(middle, from[1])} ${at(middle, to[1])} ${at(...to)}`;
}

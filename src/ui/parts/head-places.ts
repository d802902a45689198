import type { Place } from "#core/listening/heard.ts";

/** A place to point at on the head seen from above, in hundredths of the drawing's width and height. */
export interface Spot {
  readonly answer: Place | "both cups" | "cup marked L" | "cup marked R";
  /** On a cup: the letter that is drawn there. */
  readonly letter?: "L" | "R";
  readonly x: number;
  readonly y: number;
  readonly kind: "left" | "right" | "off" | "middle" | "round";
}

const ear = {
  left: { x: 17.2, y: 44, kind: "left" },
  right: { x: 82.8, y: 44, kind: "right" },
} as const;

/** From the middle outwards; the first is behind the others. */
export const earSpots: readonly Spot[] = [
  { answer: "all round", x: 50, y: 82, kind: "round" },
  { answer: "left ear", ...ear.left },
  { answer: "off to the left", x: 34.3, y: 44, kind: "off" },
  { answer: "middle", x: 50, y: 44, kind: "middle" },
  { answer: "off to the right", x: 65.7, y: 44, kind: "off" },
  { answer: "right ear", ...ear.right },
];

const marked = (letter: "L" | "R") => ({ answer: `cup marked ${letter}`, letter }) as const;

/** The cups by the letters on them; `exchanged` where they are worn the wrong way round and the letters show it. */
export const cupSpots = (exchanged: boolean): readonly Spot[] => [
  { ...marked(exchanged ? "R" : "L"), ...ear.left },
  { answer: "both cups", x: 50, y: 44, kind: "middle" },
  { ...marked(exchanged ? "L" : "R"), ...ear.right },
];

/** The head as somebody sees it who faces the listener: nose down. Names stay the listener's own. */
export const faced = (spots: readonly Spot[]): readonly Spot[] =>
  spots.map((spot) => ({ ...spot, x: 100 - spot.x }));

const headings = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
} as const;

export const isArrow = (key: string): key is keyof typeof headings => key in headings;

/** The nearest spot in the direction of an arrow, or none. */
export function neighbourOf(
  spots: readonly Spot[],
  from: Spot,
  key: keyof typeof headings,
): Spot | undefined {
  const [dx, dy] = headings[key];
  const ahead = spots
    .map((spot) => {
      const [x, y] = [spot.x - from.x, spot.y - from.y];
      return { spot, along: x * dx + y * dy, beside: Math.abs(x * dy) + Math.abs(y * dx) };
    })
    .filter(({ along, beside }) => along > 0 && (dy !== 0 || beside < along));
  return ahead.sort((a, b) => a.along + a.beside - b.along - b.beside)[0]?.spot;
}

/** As they stand on the screen from the left to the right; what is all round comes last. */
export const inARow = (spots: readonly Spot[]): readonly Spot[] =>
  spots.toSorted((a, b) => Number(a.kind === "round") - Number(b.kind === "round") || a.x - b.x);

import type { Place } from "#core/level/at-ears.ts";
import type { Feed, Programme } from "#core/level/stages.ts";
import { fromDbu, toDbu } from "#core/level/volts.ts";
import type { Reckoned } from "#core/level/way.ts";
import type { Decibels, Volts } from "#core/units/units.ts";

/** In the drawing this many decibels of sound pressure stand where 0 dBu does. */
export const earAt: Decibels = 100;
/** The least and, where nothing wants more, the most that is drawn; dBu. */
const [floor, top]: readonly [Decibels, Decibels] = [-118, 32];

/** A place of the way as it is drawn: how far along, none to one, and levels in dBu. */
export interface Spot {
  readonly along: number;
  readonly level: Decibels;
  /** With what was cut off before. */
  readonly peaks: Decibels;
  /** As they would be. */
  readonly whole: Decibels;
  readonly noise: Decibels;
}

/** The most that a place carries. */
interface Ceiling {
  readonly along: number;
  readonly most: Decibels;
  readonly cut: boolean;
}

/** A level diagram, ready to be drawn either way. */
export interface Diagram {
  readonly spots: readonly Spot[];
  readonly ceilings: readonly Ceiling[];
  /** Where peaks are cut first. */
  readonly cut:
    | { readonly along: number; readonly most: Decibels; readonly by: Decibels }
    | undefined;
  /** How many columns it has: each box, and the ear. */
  readonly columns: number;
  readonly span: readonly [low: Decibels, high: Decibels];
}

/** Nothing at all is drawn at the floor. */
const dbu = (volts: Volts): Decibels => Math.max(2 * floor, toDbu(volts));

/** Where a box is entered and left, as a part of its column; and how far the ear's lines reach into theirs. */
const side = { input: 0.2, output: 0.8 } as const;
/** Before it a source has nothing but the names of the lines. */
const begins = 0.36;
const atEar = [0.28, 0.72] as const;
/** Less is not to be seen. */
const seen: Decibels = 0.05;

const alongOf = (feed: Feed, { part, at }: Place): number =>
  (feed.stages.findIndex((stage) => stage.part === part) + side[at]) / (feed.stages.length + 1);

/** The way from the source to the ear as it is drawn. */
export function diagramOf(feed: Feed, { now }: Reckoned, { level: mean }: Programme): Diagram {
  const columns = feed.stages.length + 1;
  const crest = -mean;
  let lost = 0;
  let cut: Diagram["cut"];
  const spots: Spot[] = [startOf(feed, mean, columns)];
  const ceilings: Ceiling[] = [];
  for (const place of now.places) {
    const along = alongOf(feed, place);
    const more = -place.headroom - lost;
    const most = dbu(place.most);
    if (more > seen) {
      lost += more;
      cut ??= { along, most, by: more };
    }
    ceilings.push({ along, most, cut: more > seen });
    spots.push(spotOf(along, dbu(place.signal), crest, lost, dbu(place.noise)));
  }
  const [ear] = [...now.ears].sort((one, other) => other.level - one.level);
  const hiss = Math.max(now.ears[0].hiss, now.ears[1].hiss);
  const arrived = Math.max(2 * floor, (ear?.level ?? 0) - earAt);
  for (const end of atEar)
    spots.push(spotOf((columns - 1 + end) / columns, arrived, crest, lost, hiss - earAt));
  const high = Math.max(top, ...ceilings.map(({ most }) => most + 4));
  return { spots, ceilings, cut, columns, span: [floor, high] };
}

const spotOf = (
  along: number,
  level: Decibels,
  crest: Decibels,
  lost: Decibels,
  noise: Decibels,
): Spot => ({ along, level, peaks: level + crest - lost, whole: level + crest, noise });

/** What the source would send with its knob all the way up. */
function startOf({ stages: [source] }: Feed, mean: Decibels, columns: number): Spot {
  const { "most volts": most, "input noise": noise } = source?.figures ?? {};
  const full = dbu(most?.typical ?? fromDbu(floor));
  return spotOf(begins / columns, full + mean, -mean, 0, dbu(1e-6 * (noise?.typical ?? 1e-3)));
}

/** A point of the drawing in hundredths, from the upper left. */
export type At = (along: number, level: Decibels) => readonly [x: number, y: number];

/** From left to right with what is louder further up, or down the page with what is louder further right. */
export function placing([low, high]: Diagram["span"], across: boolean): At {
  const part = (level: Decibels) => (Math.min(high, Math.max(low, level)) - low) / (high - low);
  return (along, level) =>
    across ? [100 * along, 100 * (1 - part(level))] : [100 * part(level), 100 * along];
}

const pen = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], at) => `${at === 0 ? "M" : "L"}${x.toFixed(2)} ${y.toFixed(2)}`).join("");

/** A line through all spots. */
export const lineOf = (at: At, spots: readonly Spot[], of: (spot: Spot) => Decibels): string =>
  pen(spots.map((spot) => at(spot.along, of(spot))));

/** What lies between two lines. */
export const bandOf = (
  at: At,
  spots: readonly Spot[],
  one: (spot: Spot) => Decibels,
  other: (spot: Spot) => Decibels,
): string =>
  `${pen([
    ...spots.map((spot) => at(spot.along, one(spot))),
    ...spots.toReversed().map((spot) => at(spot.along, other(spot))),
  ])}Z`;

/** So far it is from one tooth of the noise to the next, as a part of the whole; and they are so high. */
const [tooth, height]: readonly [number, Decibels] = [0.004, 1.1];

/** The line of the noise, rough as it sounds. */
export function roughOf(at: At, spots: readonly Spot[]): string {
  const points: (readonly [number, number])[] = [];
  for (const [index, spot] of spots.entries()) {
    const next = spots[index + 1];
    if (next === undefined) break;
    const count = Math.max(1, Math.round((next.along - spot.along) / tooth));
    for (let step = 0; step < count; step++) {
      const part = step / count;
      const level = spot.noise + (next.noise - spot.noise) * part;
      const up = points.length % 2 === 0 ? height : -height;
      points.push(at(spot.along + (next.along - spot.along) * part, level + up));
    }
  }
  return pen(points);
}

/** A ceiling has so many strokes behind it, so long. */
const [strokes, slant]: readonly [number, Decibels] = [5, 3];

/** A ceiling as it is drawn in sections: a line, and what stands behind it hatched. */
export function ceilingOf(at: At, { along, most }: Ceiling, columns: number): string {
  const half = 0.16 / columns;
  const edge = pen([at(along - half, most), at(along + half, most)]);
  const step = (2 * half) / strokes;
  const behind = Array.from({ length: strokes }, (_, index) => {
    const from = along - half + index * step;
    return pen([at(from, most), at(from + step, most + slant)]);
  });
  return edge + behind.join("");
}

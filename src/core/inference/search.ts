import type { Layer } from "./layers.ts";
import { helps, type Move } from "./moves.ts";

/** A move, and the fewest seconds it may take. */
interface Open {
  readonly move: Move;
  readonly least: number;
}

/** A search over sets of hypotheses. */
export interface Search {
  /** The moves that do anything to a set before any repair in part, those first that may take least. */
  readonly first: (set: number) => readonly Open[];
  /** The least seconds when such a move is made, if they are below a bound; else some number that is not. */
  readonly follow: (set: number, move: Move, bound: number) => number;
  /** Whether the limit did not do: then what is found is not to be trusted. */
  readonly spent: () => boolean;
}

/** Remembers in the layers what it finds, and goes into at most `limit` sets. */
export function searching(
  layers: (done: number) => Layer,
  moves: readonly Move[],
  limit: number,
): Search {
  let gone = 0;
  const open = (layer: Layer, set: number): readonly Open[] =>
    moves
      .filter((move) => helps(move, layer, set))
      .map((move) => ({ move, least: atLeast(layer, layers(layer.done | move.part), set, move) }))
      .sort((a, b) => a.least - b.least);
  /** What a set takes, if below a bound; else a number that is not, and which it takes at least. */
  const best = (layer: Layer, set: number, bound: number): number => {
    const floor = layer.least[set] as number;
    if (layer.known[set] === 1 || floor >= bound || ++gone > limit) return floor;
    const found = among(layer, set, Math.min(layer.stop[set] as number, bound));
    if (gone > limit) return floor;
    if (found < bound) layer.known[set] = 1;
    layer.least[set] = Math.max(floor, found);
    return layer.least[set] as number;
  };
  const among = (layer: Layer, set: number, bound: number): number => {
    let found = bound;
    for (const { move, least } of open(layer, set)) {
      if (least >= found) break;
      found = Math.min(found, follow(layer, set, move, found));
    }
    return found;
  };
  const follow = (layer: Layer, set: number, move: Move, bound: number): number => {
    const after = layers(layer.done | move.part);
    let total = atLeast(layer, after, set, move);
    for (let at = 0; at < move.cells.length; at++) {
      const rest = set & (move.cells[at] as number);
      const before = after.least[rest] as number;
      const room = bound - total + before;
      const found = best(after, rest, room);
      if (found >= room) return bound;
      total += found - before;
    }
    return total;
  };
  return {
    first: (set) => open(layers(0), set),
    follow: (set, move, bound) => follow(layers(0), set, move, bound),
    spent: () => gone > limit,
  };
}

/** The seconds of the move itself, and the fewest for each set it may leave. */
function atLeast(layer: Layer, after: Layer, set: number, { seconds, cells }: Move): number {
  let sum = seconds * (layer.mass[set] as number);
  for (let at = 0; at < cells.length; at++)
    sum += after.least[set & (cells[at] as number)] as number;
  return sum;
}

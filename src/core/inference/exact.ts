import { type Layer, layersOf } from "./layers.ts";
import { helps, type Move, movesOf } from "./moves.ts";
import type { Choice } from "./problem.ts";
import type { Small } from "./small.ts";
import { certain } from "./useful.ts";

/** More repairs in part than this make too many layers. */
const mostInPart = 4;

/**
 * The best first step where every answer is certain: a search over subsets of hypotheses that remembers each, and leaves alone what
 * cannot be better. What follows a first step is weighed too, while `limit` sets last. Undefined where answers are not certain or
 * the limit does not do.
 */
export function exactly(
  small: Small,
  fallback: number,
  limit: number,
): readonly Choice[] | undefined {
  const partly = small.repairs.filter(({ cures }) =>
    cures.some((share) => share > 0 && share < 1),
  );
  if (partly.length > mostInPart || !small.tests.every(certain)) return undefined;
  const search = searching(small, layersOf(small, partly, fallback), movesOf(small, partly), limit);
  return search();
}

/** Thrown inside the search alone. */
class Spent extends Error {}

function searching(
  { weights }: Small,
  layers: (done: number) => Layer,
  moves: readonly Move[],
  limit: number,
): () => readonly Choice[] | undefined {
  let gone = 0;
  const best = (layer: Layer, set: number, bound: number): number => {
    const { least, known, stop } = layer;
    if (known[set] === 1 || (least[set] as number) >= bound) return least[set] as number;
    if (++gone > limit) throw new Spent();
    let found = stop[set] as number;
    const open = openAt(layer, set, Math.min(found, bound));
    for (let next = cheapest(open); next !== undefined; next = cheapest(open)) {
      const cap = Math.min(found, bound);
      if (next.least >= cap) break;
      found = Math.min(found, follow(layer, set, next, cap));
    }
    if (found < bound) known[set] = 1;
    least[set] = Math.max(least[set] as number, Math.min(found, bound));
    return least[set] as number;
  };
  const openAt = (layer: Layer, set: number, cap: number): Open[] => {
    const open: Open[] = [];
    for (const move of moves) {
      if (!helps(move, layer, set)) continue;
      const least = atLeast(layer, set, move, layers);
      if (least < cap) open.push({ move, least });
    }
    return open;
  };
  const follow = (layer: Layer, set: number, { move, least }: Open, cap: number): number => {
    const after = layers(layer.done | move.part);
    let total = atLeast(layer, set, move, layers);
    for (let at = 0; at < move.cells.length && total < cap; at++) {
      const rest = set & (move.cells[at] as number);
      const before = after.least[rest] as number;
      total += best(after, rest, cap - total + before) - before;
    }
    return Math.max(total, least);
  };
  return () => {
    try {
      return firsts();
    } catch (error) {
      if (error instanceof Spent) return undefined;
      throw error;
    }
  };
}

interface Open {
  readonly move: Move;
  readonly least: number;
}

import { layersOf } from "./layers.ts";
import { movesOf } from "./moves.ts";
import type { Choice } from "./problem.ts";
import { type Search, searching } from "./search.ts";
import type { Small } from "./small.ts";
import { certain } from "./useful.ts";

/** More repairs in part than this make too many layers. */
const mostInPart = 4;

/**
 * First steps and the least seconds with each, the best first, where every answer is certain: a search over sets of hypotheses that
 * remembers each, and leaves alone what cannot be better. Other first steps are weighed while the `limit` of sets gone into lasts.
 * Undefined where answers are not certain or the limit does not do.
 */
export function exactly(
  small: Small,
  fallback: number,
  limit: number,
): readonly Choice[] | undefined {
  const partly = small.repairs.filter(({ cures }) => cures.some((share) => share > 0 && share < 1));
  if (partly.length > mostInPart || !small.tests.every(certain)) return undefined;
  const layers = layersOf(small, partly, fallback);
  const search = searching(layers, movesOf(small, partly), limit);
  const all = (1 << small.weights.length) - 1;
  const stop: Choice = { next: { step: "done" }, seconds: layers(0).stop[all] as number };
  const best = bestOf(search, all, stop);
  return search.spent() ? undefined : [best, ...runnersUp(search, all, stop, best)];
}

function bestOf({ first, follow }: Search, all: number, stop: Choice): Choice {
  let best = stop;
  for (const { move, least } of first(all)) {
    if (least >= best.seconds) break;
    const seconds = follow(all, move, best.seconds);
    if (seconds < best.seconds) best = { next: move.next, seconds };
  }
  return best;
}

/** The least seconds of each other first step, so far as the limit allows. */
function runnersUp({ first, follow, spent }: Search, all: number, stop: Choice, best: Choice) {
  const others = [stop];
  for (const { move } of first(all)) {
    const seconds = follow(all, move, Number.POSITIVE_INFINITY);
    if (spent()) break;
    others.push({ next: move.next, seconds });
  }
  return others.filter(({ next }) => next !== best.next).toSorted((a, b) => a.seconds - b.seconds);
}

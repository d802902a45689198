/** What may be wrong, with tests whose answers are certain. Nothing here is shared with the search that it judges. */
export interface Certain {
  /** Odds of each hypothesis, in proportion. */
  readonly odds: readonly number[];
  /** Nothing needs mending. */
  readonly fine: readonly boolean[];
  /** The answer under each hypothesis. */
  readonly tests: readonly { readonly seconds: number; readonly answer: readonly number[] }[];
  /** How likely it cures each hypothesis; each is made once, and then one hears whether all is well. */
  readonly repairs: readonly { readonly seconds: number; readonly cures: readonly number[] }[];
}

/** A state: which hypotheses are left, and which repairs that cure in part were made; each as bits. */
interface Left {
  readonly some: number;
  readonly made: number;
}

/** A step: its seconds, and for each state that it leads to what is left there. Undefined where it tells and cures nothing. */
interface Stride {
  readonly seconds: number;
  readonly to: (left: Left) => readonly Left[] | undefined;
}

const placesIn = (bits: number): readonly number[] =>
  Array.from({ length: 31 }, (_, at) => at).filter((at) => (bits & (1 << at)) !== 0);

const bitsWhere = <Item>(items: readonly Item[], holds: (item: Item) => boolean): number =>
  items.reduce((bits, item, at) => bits | (holds(item) ? 1 << at : 0), 0);

/** Sorts what is left by its answer. */
const asking = ({ seconds, answer }: Certain["tests"][number]): Stride => {
  const parts = [...new Set(answer)].map((one) => bitsWhere(answer, (each) => each === one));
  return {
    seconds,
    to: ({ some, made }) => {
      const split = parts.map((part) => part & some).filter((part) => part !== 0);
      return split.length < 2 ? undefined : split.map((part) => ({ some: part, made }));
    },
  };
};

/** Takes away what it surely cures, and what turns out to be fine. `place`: its bit among those that cure in part, or minus one. */
const mending = (
  { seconds, cures }: Certain["repairs"][number],
  place: number,
  fine: number,
): Stride => {
  const gone = bitsWhere(cures, (share) => share >= 1) | fine;
  const bit = place < 0 ? 0 : 1 << place;
  return {
    seconds,
    to: ({ some, made }) => {
      if ((made & bit) !== 0) return undefined;
      const rest = { some: some & ~gone, made: made | bit };
      return rest.some === some && bit === 0 ? undefined : [rest];
    },
  };
};

/** The mass of some hypotheses once some repairs in part were made. */
function massesOf({ odds, repairs }: Certain, partly: readonly number[]) {
  const known = new Map<number, number>();
  const work = (some: number, made: number): number => {
    const done = placesIn(made).map((at) => repairs[partly[at] ?? -1]?.cures ?? []);
    return placesIn(some).reduce(
      (sum, at) => sum + done.reduce((left, cures) => left * (1 - (cures[at] ?? 0)), odds[at] ?? 0),
      0,
    );
  };
  return (some: number, made: number): number => {
    const key = (some << partly.length) | made;
    const found = known.get(key) ?? work(some, made);
    known.set(key, found);
    return found;
  };
}

/**
 * The least expected seconds to a rig that works, by dynamic programming over subsets of at most 15 hypotheses, and over which repairs
 * that cure in part were made. To stop where something is wrong costs `fallback`.
 */
export function optimumOf(problem: Certain, fallback: number): number {
  const { fine, tests, repairs, odds } = problem;
  const partly = repairs.flatMap(({ cures }, at) =>
    cures.some((share) => share > 0 && share < 1) ? [at] : [],
  );
  const healthy = bitsWhere(fine, (one) => one);
  const mass = massesOf(problem, partly);
  const strides = [
    ...tests.map(asking),
    ...repairs.map((one, at) => mending(one, partly.indexOf(at), healthy)),
  ];
  const known = new Map<number, number>();
  const bestFrom = (left: Left, stop: number): number => {
    const all = mass(left.some, left.made);
    let best = stop;
    for (const { seconds, to } of strides) {
      const cost = all * seconds;
      const next = cost < best ? to(left) : undefined;
      if (next)
        best = Math.min(
          best,
          next.reduce((sum, one) => sum + least(one), cost),
        );
    }
    return best;
  };
  /** Seconds times the mass of the state: those of several states add up. */
  const least = (left: Left): number => {
    const wrong = left.some & ~healthy;
    if (wrong === 0) return 0;
    const key = (left.some << partly.length) | left.made;
    const found = known.get(key);
    if (found !== undefined) return found;
    const best = bestFrom(left, mass(wrong, left.made) * fallback);
    known.set(key, best);
    return best;
  };
  const whole = { some: 2 ** odds.length - 1, made: 0 };
  return least(whole) / mass(whole.some, 0);
}

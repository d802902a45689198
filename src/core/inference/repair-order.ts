/** Something that can be mended or replaced. */
export interface Repair {
  /** To try it and hear whether that was it. */
  readonly seconds: number;
  /** The share of each hypothesis it cures, from 0 to 1: a contact put in again may come good half the time. */
  readonly cures: Float64Array;
  /** More seconds, spent only where it is the cause: to look costs little, to replace what was found costs more. 0 if left out. */
  readonly mending?: number;
}

/** Repairs in the order to try them. */
export interface RepairOrder {
  /** Places in the list of repairs; those that would cure nothing more are left out. */
  readonly order: readonly number[];
  /** Expected cost of repair. */
  readonly seconds: number;
}

/** A hypothesis less likely than this counts as cured. */
const nothing = 1e-12;

/**
 * Expected seconds of trying repairs in an order: the sum of (1 − what was cured before) · seconds + what it cures · mending
 * (Heckerman, Breese and Rommelse, 1995), and `otherwise` seconds for what none of them cured.
 */
export function expectedRepair(
  probabilities: Float64Array,
  repairs: readonly Repair[],
  order: readonly number[],
  otherwise = 0,
): number {
  const left = probabilities.slice();
  const total = order.reduce((sum, at) => {
    const { seconds, mending = 0, cures } = repairs[at] as Repair;
    const before = massOf(left);
    cure(left, cures);
    return sum + before * seconds + (before - massOf(left)) * mending;
  }, 0);
  return total + massOf(left) * otherwise;
}

/**
 * The order by probability per second: the best where each repair cures its own hypotheses (Kadane and Simon, 1977). Where several
 * cure the same one, what is left of it is counted afresh after each step.
 */
export function repairOrder(
  probabilities: Float64Array,
  repairs: readonly Repair[],
  otherwise = 0,
): RepairOrder {
  const order: number[] = [];
  ordering(repairs, probabilities.length)(probabilities, (at) => order.push(at) > 0);
  return { order, seconds: expectedRepair(probabilities, repairs, order, otherwise) };
}

/** The expected seconds of some probabilities, which need not sum to one: the seconds are in proportion. */
export type RepairCost = (probabilities: Float64Array) => number;

/**
 * Expected seconds of that order, given up for `otherwise` seconds at the moment where that is best. Above zero, `careless` gives up
 * at the first repair that costs more than it saves, or where what is left is no more than this share of the seconds.
 */
export function repairsAtBest(
  repairs: readonly Repair[],
  hypotheses: number,
  otherwise: number,
  careless = 0,
): RepairCost {
  const walk = ordering(repairs, hypotheses);
  return (probabilities) => {
    let before = massOf(probabilities);
    let spent = 0;
    let best = before * otherwise;
    walk(probabilities, (at, cured) => {
      const { seconds, mending = 0 } = repairs[at] as Repair;
      const cost = before * seconds + cured * mending;
      spent += cost;
      before -= cured;
      best = Math.min(best, spent + before * otherwise);
      return careless === 0 || (cured * otherwise > cost && before * otherwise > careless * spent);
    });
    return best;
  };
}

/** Walks the repairs, while `visit` says so. */
type Walk = (probabilities: Float64Array, visit: (at: number, cured: number) => boolean) => void;

/**
 * Those repairs first that cure most a second; each once. What one would cure only falls as others are done, so a rate is counted
 * afresh only when it is the highest. The arrays are made once, for this is asked often.
 */
function ordering(repairs: readonly Repair[], hypotheses: number): Walk {
  const left = new Float64Array(hypotheses);
  const rates = new Float64Array(repairs.length);
  const count = (at: number): number => {
    const { seconds, cures } = repairs[at] as Repair;
    const cured = curedOf(left, cures);
    rates[at] = cured > nothing ? cured / seconds : 0;
    return cured;
  };
  /** The next repair and what it cures; -1 where none cures anything more. */
  const next = (): [at: number, cured: number] => {
    for (let best = highest(rates); best >= 0; best = highest(rates)) {
      const cured = count(best);
      if (highest(rates) === best) return [best, cured];
    }
    return [-1, 0];
  };
  return (probabilities, visit) => {
    left.set(probabilities);
    for (let at = 0; at < repairs.length; at++) count(at);
    for (let [at, cured] = next(); at >= 0 && visit(at, cured); [at, cured] = next()) {
      cure(left, (repairs[at] as Repair).cures);
      rates[at] = 0;
    }
  };
}

/** The place of the highest number, the first of several; -1 where none is above zero. */
function highest(numbers: Float64Array): number {
  let best = -1;
  let most = 0;
  for (let at = 0; at < numbers.length; at++) {
    const one = numbers[at] as number;
    if (one > most) {
      best = at;
      most = one;
    }
  }
  return best;
}

/** The sum of some masses. */
export function massOf(weights: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < weights.length; at++) sum += weights[at] as number;
  return sum;
}

/** How much of what is left a repair would cure. */
function curedOf(left: Float64Array, cures: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < left.length; at++) sum += (left[at] as number) * (cures[at] as number);
  return sum;
}

function cure(left: Float64Array, cures: Float64Array): void {
  for (let at = 0; at < left.length; at++) left[at] = (left[at] as number) * (1 - (cures[at] ?? 0));
}

import { type Behaviour, follow, straight } from "#core/rig/behaviour.ts";

/** Behaviours as numbers: two whose gains agree to a two-thousandth (66 dB down) are one. */
export interface Pool {
  readonly number: (behaviour: Behaviour) => number;
  readonly behaviour: (number: number) => Behaviour;
  readonly join: (first: number, then: number) => number;
  /** The number of a way that changes nothing. */
  readonly straight: number;
}

export function createPool(): Pool {
  const known = new Map<string, number>();
  const behaviours: Behaviour[] = [];
  const joins: Map<number, number>[] = [];
  const number = (behaviour: Behaviour): number => {
    const key = keyOf(behaviour);
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, behaviours.length);
    return behaviours.push(behaviour) - 1;
  };
  const behaviour = (at: number): Behaviour => {
    const found = behaviours[at];
    if (found === undefined) throw new Error(`no behaviour has number ${at}`);
    return found;
  };
  const join = (first: number, then: number): number => {
    const row = joins[first] ?? new Map<number, number>();
    joins[first] = row;
    const found = row.get(then);
    if (found !== undefined) return found;
    const made = number(follow(behaviour(first), behaviour(then)));
    row.set(then, made);
    return made;
  };
  return { number, behaviour, join, straight: number(straight) };
}

const rounded = (value: number): number => Math.round(value * 2e3);

function keyOf({ gains, worn, hearing, mirrors, unlisted }: Behaviour): string {
  if (unlisted) return `unlisted ${gains.length} ${gains[0]?.length}`;
  let key = `${worn} ${hearing[0]} ${hearing[1]} ${mirrors}`;
  key += "|".repeat(gains.length);
  for (const row of gains) for (const { re, im } of row) key += ` ${rounded(re)} ${rounded(im)}`;
  return key;
}

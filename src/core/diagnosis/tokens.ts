import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Channel } from "./channels.ts";
import { type Life, thereAt } from "./course.ts";
import type { Pool } from "./pool.ts";
import { through } from "./ways.ts";

/** What has been gone through of a way, channel by channel, and the faults whose circuits reach further down. */
interface Passed {
  readonly numbers: readonly number[];
  readonly waiting: readonly Life[];
}

/** A state of a branch whose circuits reach across into another: it is read together with what waits above it. */
interface Across {
  readonly lives: readonly Life[];
  readonly branch: AcrossBranch;
}

export interface AcrossBranch {
  readonly name: string;
  readonly channels: readonly Channel[];
  /** The faults that circuits further down need. */
  readonly deeper: ReadonlySet<RigFault>;
}

type Entry = Passed | Across;

/**
 * Numbers for what the inference hands down a tree. An even one is one behaviour of the pool; an odd one stands for several channels, or for
 * faults that wait to be solved with others.
 */
export interface Tokens {
  /** A behaviour in each channel. */
  readonly vector: (numbers: readonly number[]) => number;
  /** A state of a branch that reaches across. */
  readonly across: (branch: AcrossBranch, lives: readonly Life[]) => number;
  /** The behaviour in one channel. */
  readonly at: (token: number, channel: number) => number;
  readonly join: (above: number, below: number) => number;
  /** What goes to a branch below: for each of its channels the number of the one above, and only the faults that are needed there. */
  readonly project: (
    token: number,
    ups: readonly number[],
    needed: ReadonlySet<RigFault>,
  ) => number;
  /** Every behaviour in another's place. */
  readonly map: (token: number, change: (number: number) => number) => number;
}

export const createTokens = (pool: Pool): Tokens => new Numbered(pool);

class Numbered implements Tokens {
  readonly #pool: Pool;
  readonly #entries: Entry[] = [];
  readonly #known = new Map<string, number>();

  constructor(pool: Pool) {
    this.#pool = pool;
  }

  readonly vector = (numbers: readonly number[]): number => {
    const [first] = numbers;
    if (first !== undefined && numbers.length === 1) return first * 2;
    return this.#enter(`v ${numbers}`, () => ({ numbers, waiting: [] }));
  };

  readonly across = (branch: AcrossBranch, lives: readonly Life[]): number =>
    this.#enter(`a ${branch.name} ${lives.map(lifeKey)}`, () => ({ branch, lives }));

  readonly at = (token: number, channel: number): number => {
    if (token % 2 === 0 && channel === 0) return token / 2;
    const number = this.#read(token).numbers[channel];
    if (number === undefined) throw new Error(`token ${token} has no channel ${channel}`);
    return number;
  };

  readonly join = (above: number, below: number): number => {
    const pool = this.#pool;
    if (above % 2 === 0 && below % 2 === 0) return pool.join(above / 2, below / 2) * 2;
    const way = this.#read(above);
    const own = below % 2 === 0 ? { numbers: [below / 2] } : this.#entry(below);
    if ("branch" in own) return this.#passed(reached(pool, way, own));
    const numbers = way.numbers.map((number, at) =>
      pool.join(number, own.numbers[at] ?? pool.straight),
    );
    return this.#passed({ numbers, waiting: way.waiting });
  };

  readonly project = (
    token: number,
    ups: readonly number[],
    needed: ReadonlySet<RigFault>,
  ): number => {
    const { numbers, waiting } = this.#read(token);
    return this.#passed({
      numbers: ups.map((up) => numbers[up] ?? this.#pool.straight),
      waiting: waiting.filter(({ fault }) => needed.has(fault)),
    });
  };

  readonly map = (token: number, change: (number: number) => number): number => {
    if (token % 2 === 0) return change(token / 2) * 2;
    const { numbers, waiting } = this.#read(token);
    return this.#passed({ numbers: numbers.map(change), waiting });
  };

  #enter(key: string, entry: () => Entry): number {
    const found = this.#known.get(key) ?? this.#entries.push(entry()) * 2 - 1;
    this.#known.set(key, found);
    return found;
  }

  #passed(way: Passed): number {
    const { numbers, waiting } = way;
    return waiting.length === 0
      ? this.vector(numbers)
      : this.#enter(`w ${numbers} ${waiting.map(lifeKey)}`, () => way);
  }

  #entry(token: number): Entry {
    const found = this.#entries[token >> 1];
    if (found === undefined) throw new Error(`no token has number ${token}`);
    return found;
  }

  #read(token: number): Passed {
    if (token % 2 === 0) return { numbers: [token / 2], waiting: [] };
    const found = this.#entry(token);
    if ("branch" in found) throw new Error("this is a branch's own state, and no way");
    return found;
  }
}

const lifeKey = ({ fault, from, until }: Life): string => `${fault.id}@${from}-${until}`;

/** The steps of a branch after what was passed above it, with the faults that waited for them. */
function reached(pool: Pool, above: Passed, { branch, lives }: Across): Passed {
  const all = [...above.waiting, ...lives];
  const numbers = branch.channels.map(({ ops, epoch }, at) =>
    through(pool, ops, thereAt(all, epoch), above.numbers[at]),
  );
  return { numbers, waiting: all.filter(({ fault }) => branch.deeper.has(fault)) };
}

import { type Behaviour, follow, straight } from "#core/rig/behaviour.ts";
import type { Probability } from "#core/units/units.ts";

/** A behaviour, and how often it shows. */
interface Showing {
  readonly number: number;
  readonly share: Probability;
}

/**
 * Behaviours as numbers: two whose gains agree to a two-thousandth (66 dB down) are one. A number may also stand for a behaviour that
 * comes and goes.
 */
export interface Pool {
  number(behaviour: Behaviour): number;
  /** Throws on a number that stands for several. */
  behaviour(number: number): Behaviour;
  join(first: number, then: number): number;
  /** The number of a way that changes nothing. */
  readonly straight: number;
  /** One of several behaviours at each hearing, drawn anew. Shares sum to one. */
  either(showings: readonly Showing[]): number;
  /** One of two, with even odds at each hearing. */
  half(one: number, other: number): number;
  /** What a number shows, each alone; a plain one shows itself. */
  showings(number: number): readonly Showing[];
  comesAndGoes(number: number): boolean;
  /** The same, but of what goes that way nothing is known. */
  unlisted(number: number): number;
}

type Entry =
  | { readonly kind: "one"; readonly behaviour: Behaviour }
  | { readonly kind: "either"; readonly showings: readonly Showing[] };

export const createPool = (): Pool => new Behaviours();

class Behaviours implements Pool {
  readonly #known = new Map<string, number>();
  readonly #entries: Entry[] = [];
  readonly #joins: Map<number, number>[] = [];
  readonly straight = this.number(straight);

  number(behaviour: Behaviour): number {
    return this.#enter(keyOf(behaviour), () => ({ kind: "one", behaviour }));
  }

  behaviour(at: number): Behaviour {
    const entry = this.#at(at);
    if (entry.kind !== "one") throw new Error(`number ${at} stands for several behaviours`);
    return entry.behaviour;
  }

  /** What changes nothing is that, however many signals there are. */
  join(first: number, then: number): number {
    if (first === this.straight) return then;
    if (then === this.straight) return first;
    const row = this.#joins[first] ?? new Map<number, number>();
    this.#joins[first] = row;
    const found = row.get(then) ?? this.#joined(first, then);
    row.set(then, found);
    return found;
  }

  either(all: readonly Showing[]): number {
    const showings = gathered(all);
    const [first] = showings;
    if (first !== undefined && showings.length === 1) return first.number;
    const key = `either ${showings.map((one) => `${one.number}:${one.share}`)}`;
    return this.#enter(key, () => ({ kind: "either", showings }));
  }

  half(one: number, other: number): number {
    return this.either(
      [one, other].flatMap((at) =>
        this.showings(at).map((each) => ({ ...each, share: each.share / 2 })),
      ),
    );
  }

  showings(at: number): readonly Showing[] {
    const entry = this.#at(at);
    return entry.kind === "either" ? entry.showings : [{ number: at, share: 1 }];
  }

  comesAndGoes(at: number): boolean {
    return this.#at(at).kind === "either";
  }

  unlisted(at: number): number {
    return this.either(
      this.showings(at).map(({ number, share }) => ({
        number: this.number({ ...this.behaviour(number), unlisted: true }),
        share,
      })),
    );
  }

  #joined(first: number, then: number): number {
    const [one, other] = [this.#at(first), this.#at(then)];
    if (one.kind === "one" && other.kind === "one")
      return this.number(follow(one.behaviour, other.behaviour));
    return this.either(
      this.showings(first).flatMap((a) =>
        this.showings(then).map((b) => ({
          number: this.join(a.number, b.number),
          share: a.share * b.share,
        })),
      ),
    );
  }

  #enter(key: string, entry: () => Entry): number {
    const found = this.#known.get(key);
    if (found !== undefined) return found;
    this.#known.set(key, this.#entries.length);
    return this.#entries.push(entry()) - 1;
  }

  #at(at: number): Entry {
    const found = this.#entries[at];
    if (found === undefined) throw new Error(`no behaviour has number ${at}`);
    return found;
  }
}

/** Each behaviour once, in the order of their numbers. */
function gathered(showings: readonly Showing[]): readonly Showing[] {
  const shares = new Map<number, number>();
  for (const { number, share } of showings) shares.set(number, (shares.get(number) ?? 0) + share);
  return [...shares]
    .map(([number, share]) => ({ number, share }))
    .sort((a, b) => a.number - b.number);
}

const rounded = (value: number): number => Math.round(value * 2e3);

function keyOf({ gains, late, worn, hearing, mirrors, unlisted }: Behaviour): string {
  if (unlisted) return `unlisted ${gains.length} ${gains[0]?.length}`;
  let key = `${worn} ${hearing[0]} ${hearing[1]} ${mirrors} ${late}`;
  key += "|".repeat(gains.length);
  for (const row of gains) for (const { re, im } of row) key += ` ${rounded(re)} ${rounded(im)}`;
  return key;
}

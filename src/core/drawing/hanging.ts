import { isFed } from "#core/rig/reach.ts";
import type { BuiltRig, Connection } from "#core/rig/rig.ts";
import { groupedBy } from "#core/units/grouped.ts";

/** How something hangs on a box, adapter or splitter: by leads, or by a plug of its own. */
export interface Join {
  readonly leads: readonly string[];
  /** The plugs in what it hangs on. */
  readonly near: readonly Connection[];
  /** The plugs in its own inputs. */
  readonly far: readonly Connection[];
  /** Nothing at the end of a lead whose other end is loose. */
  readonly twig: Twig | undefined;
}

/** A part with sockets, or something worn, and all that hangs on it in the order of its sockets. */
export interface Twig {
  readonly part: string;
  readonly joins: readonly Join[];
}

/** A rig as what hangs on what. Every part stands in it once, whatever goes round. */
export interface Hanging {
  /** Sources first, then what is joined to none. */
  readonly roots: readonly Twig[];
  /** Leads that hang on nothing. */
  readonly loose: readonly string[];
}

/** A part that has plugs and no sockets, and that nobody wears. */
export const isLead = (rig: BuiltRig, id: string): boolean => {
  const { plugs, sockets, takes } = rig.part(id);
  return sockets.length === 0 && takes.length === 0 && plugs.length > 0;
};

export function hangingIn(rig: BuiltRig): Hanging {
  const reader = new Reader(rig);
  const ids = rig.parts.map(({ id }) => id).filter((id) => rig.part(id).family !== "person");
  const boxes = ids.filter((id) => !isLead(rig, id));
  const sources = boxes.filter(
    (id) => rig.part(id).sockets.some(({ side }) => side === "out") && !isFed(rig, id),
  );
  const roots = [...sources, ...boxes].flatMap((id) => reader.root(id));
  return { roots, loose: ids.filter((id) => !reader.met.has(id)) };
}

/** Reads a rig from its sources on. */
class Reader {
  readonly met = new Set<string>();
  readonly #rig: BuiltRig;

  constructor(rig: BuiltRig) {
    this.#rig = rig;
  }

  root(id: string): readonly Twig[] {
    return this.met.has(id) ? [] : [this.#twig(id)];
  }

  #twig(part: string): Twig {
    this.met.add(part);
    const joins: Join[] = [];
    for (const way of this.#ways(part)) {
      const { next } = way;
      if (next !== undefined && this.met.has(next)) continue;
      for (const lead of way.leads) this.met.add(lead);
      const { leads, near, far } = way;
      joins.push({ leads, near, far, twig: next === undefined ? undefined : this.#twig(next) });
    }
    return { part, joins };
  }

  /** What hangs on a part, each thing once. */
  #ways(part: string): readonly Way[] {
    const { sockets } = this.#rig.part(part);
    const order = sockets.map(({ name }) => name);
    const outside = sockets.flatMap(({ name, side }) => (side === "in" ? [] : [name]));
    const plugged = this.#rig.plugged
      .filter(({ into, socket }) => into === part && outside.includes(socket))
      .sort((a, b) => order.indexOf(a.socket) - order.indexOf(b.socket));
    return together([...plugged.flatMap((end) => this.#by(end)), ...this.#own(part)]);
  }

  /** What a plug in an output leads to. */
  #by(end: Connection): readonly Way[] {
    const { part } = end;
    if (this.met.has(part)) return [];
    if (!isLead(this.#rig, part)) return [{ next: part, leads: [], near: [end], far: [] }];
    const others = this.#plugsOf(part).filter((one) => one !== end && this.#goesIn(one));
    const far = others.filter(({ into }) => into !== end.into);
    const [first] = far;
    return [
      {
        next: first?.into,
        leads: [part],
        near: [end],
        far: far.filter(({ into }) => into === first?.into),
      },
    ];
  }

  /** Where an adapter leads that stands in an input, by its own plug. */
  #own(part: string): readonly Way[] {
    const { through, takes } = this.#rig.part(part);
    if (through !== undefined || takes.length > 0) return [];
    return this.#plugsOf(part)
      .filter((end) => this.#goesIn(end))
      .map((end) => ({ next: end.into, leads: [], near: [], far: [end] }));
  }

  #plugsOf(id: string): readonly Connection[] {
    return this.#rig.plugged.filter(({ part }) => part === id);
  }

  /** Whether a plug stands in what it feeds: an input, or a socket that passes everything on. */
  #goesIn({ into, socket }: Connection): boolean {
    return this.#rig.part(into).sockets.some(({ name, side }) => name === socket && side !== "out");
  }
}

interface Way {
  readonly next: string | undefined;
  readonly leads: readonly string[];
  readonly near: readonly Connection[];
  readonly far: readonly Connection[];
}

/** Several plugs that lead to one thing are one way; so are the plugs of one lead that leads nowhere. */
function together(ways: readonly Way[]): readonly Way[] {
  const whither = ({ next, leads }: Way) => next ?? `loose ${leads[0]}`;
  const unique = <T>(all: readonly T[]): readonly T[] => [...new Set(all)];
  return groupedBy(ways, (one, other) => whither(one) === whither(other)).map((same) => ({
    next: same[0].next,
    leads: unique(same.flatMap(({ leads }) => leads)),
    near: unique(same.flatMap(({ near }) => near)),
    far: unique(same.flatMap(({ far }) => far)),
  }));
}

/** Everything that hangs by a join, its leads first. */
export const partsBy = ({ leads, twig }: Join): readonly string[] => [
  ...leads,
  ...(twig === undefined ? [] : [twig.part, ...twig.joins.flatMap(partsBy)]),
];

/** One step down a rig: the join, and what it hangs on. */
export interface Step {
  readonly on: Twig;
  readonly join: Join;
}

/** The steps from a source down to a part or a lead; nothing where it hangs on nothing. */
export function stepsTo({ roots }: Hanging, part: string): readonly Step[] {
  const below = (on: Twig): readonly Step[] | undefined => {
    for (const join of on.joins) {
      if (join.twig?.part === part || join.leads.includes(part)) return [{ on, join }];
      const rest = join.twig && below(join.twig);
      if (rest !== undefined) return [{ on, join }, ...rest];
    }
    return undefined;
  };
  for (const root of roots) {
    const found = below(root);
    if (found !== undefined) return found;
  }
  return [];
}

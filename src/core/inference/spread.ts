import { type Class, packed } from "./classes.ts";
import type { Gathered } from "./gather.ts";
import type { Knot } from "./knot.ts";

/** A behaviour of the whole way to an end of the tree, with what stands above its last knot, and its probability. */
export interface Way {
  readonly above: number;
  readonly behaviour: number;
  readonly probability: number;
}

/** Where a knot may find itself: what is above it, and how many more faults fit on the way. */
export interface Context {
  readonly above: number;
  readonly room: number;
  mass: number;
}

/** What a knot gets: its states' probabilities, and what goes on below it. */
export interface Spread {
  readonly states: Float64Array;
  readonly ways: readonly Way[];
  /** Where each knot below may find itself. */
  readonly contexts: (child: number) => readonly Context[];
}

/** Ways less likely than this are left out of the list of ways; every state keeps its share. */
const least = 1e-10;

/** Hands the mass of each context to the states of a knot, and from there to the contexts below. */
export function spread(knot: Knot, contexts: readonly Context[], gathered: Gathered): Spread {
  const states = new Float64Array(knot.states.length);
  const { towards } = knot;
  /** One list for all below, or where they get different things one for each. */
  const below = Array.from(
    { length: towards === undefined ? 1 : knot.below.length },
    () => new Map<number, Context>(),
  );
  const ways: Way[] = [];
  const end = knot.below.length === 0;
  /** What one class gets of a context's mass. */
  const hand = (one: Class, whole: number, { above, room }: Context, scale: number): void => {
    const left = room - one.faults;
    const probability = scale * one.weight * gathered.beyond(whole, left);
    share(states, knot, one, probability);
    if (!end)
      for (const [child, into] of below.entries())
        gather(into, towards?.(whole, child) ?? whole, left, probability);
    else if (probability > least) ways.push({ above, behaviour: whole, probability });
  };
  for (const context of contexts) {
    const total = gathered.at(context.above, context.room);
    if (total === 0 || context.mass === 0) continue;
    const row = gathered.rows.row(context.above, context.room);
    for (let index = 0; index < row.length; index++)
      hand(gathered.classes[index] as Class, row[index] as number, context, context.mass / total);
  }
  const found = below.map((one) => [...one.values()]);
  return { states, ways, contexts: (child) => found[child] ?? found[0] ?? [] };
}

/** A class's probability goes to its members by their weights. */
function share(states: Float64Array, knot: Knot, { members, weight }: Class, probability: number) {
  if (weight === 0) return;
  for (const index of members)
    states[index] =
      (states[index] ?? 0) + (probability * (knot.states[index]?.weight ?? 0)) / weight;
}

function gather(below: Map<number, Context>, above: number, room: number, mass: number): void {
  const key = packed(above, room);
  const context = below.get(key);
  if (context === undefined) below.set(key, { above, room, mass });
  else context.mass += mass;
}

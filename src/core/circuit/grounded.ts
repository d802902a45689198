import type { Hertz } from "#core/units/units.ts";
import type { Numbered } from "./numbered.ts";

/**
 * Throws, with the name of a node, if nothing ties it to earth at this frequency. Told by the graph, not by the pivots: rounding may
 * leave a group that floats a pivot of its own.
 */
export function refuseFloating({ circuit, nodes, ends }: Numbered, at: Hertz): void {
  /** For each node one that speaks for all it is tied to; earth is the first. */
  const leaders = Int32Array.from({ length: nodes.length + 1 }, (_, node) => node);
  for (const [element, { kind }] of circuit.entries())
    if (kind !== "capacitor" || at > 0)
      join(leaders, (ends[2 * element] as number) + 1, (ends[2 * element + 1] as number) + 1);
  const ground = leaderOf(leaders, 0);
  for (const [at, node] of nodes.entries())
    if (leaderOf(leaders, at + 1) !== ground)
      throw new Error(`node ${node} floats: nothing ties it to earth`);
}

function leaderOf(leaders: Int32Array, node: number): number {
  let at = node;
  while (leaders[at] !== at) at = leaders[at] as number;
  leaders[node] = at;
  return at;
}

function join(leaders: Int32Array, a: number, b: number): void {
  leaders[leaderOf(leaders, a)] = leaderOf(leaders, b);
}

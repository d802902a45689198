import type { Hertz } from "#core/units/units.ts";
import { type Circuit, earth, type Node } from "./circuit.ts";

/**
 * Throws, with the name of a node, if nothing ties it to earth at this frequency. Told by the graph, not by the pivots: rounding may
 * leave a group that floats a pivot of its own.
 */
export function refuseFloating(circuit: Circuit, at: Hertz): void {
  const ties = circuit.filter(({ kind }) => kind !== "capacitor" || at > 0);
  const reached = new Set<Node>([earth]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const { a, b } of ties) if (reached.has(a) !== reached.has(b)) reached.add(a).add(b);
  }
  const lost = circuit.flatMap(({ a, b }) => [a, b]).find((node) => !reached.has(node));
  if (lost !== undefined) throw new Error(`node ${lost} floats: nothing ties it to earth`);
}

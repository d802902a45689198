import type { Hertz } from "#core/units/units.ts";
import { type Circuit, type Element, earth, type Node } from "./circuit.ts";

/**
 * Throws, with the name of a node, if nothing ties it to earth at this frequency. Told by the graph, not by the pivots: rounding may
 * leave a group that floats a pivot of its own.
 */
export function refuseFloating(circuit: Circuit, at: Hertz): void {
  const ties = ({ kind }: Element) => kind !== "capacitor" || at > 0;
  const leader = new Map<Node, Node>();
  for (const element of circuit) if (ties(element)) join(leader, element);
  const ground = find(leader, earth);
  for (const { a, b } of circuit)
    for (const node of [a, b])
      if (find(leader, node) !== ground)
        throw new Error(`node ${node} floats: nothing ties it to earth`);
}

/** The one that speaks for all that a node is tied to. */
function find(leader: Map<Node, Node>, node: Node): Node {
  let at = node;
  for (let up = leader.get(at); up !== undefined; up = leader.get(at)) at = up;
  if (at !== node) leader.set(node, at);
  return at;
}

function join(leader: Map<Node, Node>, { a, b }: Element): void {
  const [one, other] = [find(leader, a), find(leader, b)];
  if (one !== other) leader.set(one, other);
}

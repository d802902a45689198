import { type Circuit, earth, type Node } from "./circuit.ts";

/** A circuit whose nodes have numbers. */
export interface Numbered {
  readonly circuit: Circuit;
  /** Every node but earth, in the order they are met. */
  readonly nodes: readonly Node[];
  /** The numbers of both ends of each element, one element after the other; earth is -1. */
  readonly ends: Int32Array;
  /** Throws on a node that no element touches. */
  readonly numberOf: (node: Node) => number;
}

/** Numbers the nodes of a circuit. */
export function numbered(circuit: Circuit): Numbered {
  const numbers = new Map<Node, number>([[earth, -1]]);
  const meet = (node: Node): number => {
    const known = numbers.get(node);
    if (known !== undefined) return known;
    numbers.set(node, numbers.size - 1);
    return numbers.size - 2;
  };
  const ends = new Int32Array(2 * circuit.length);
  for (const [at, { a, b }] of circuit.entries()) {
    ends[2 * at] = meet(a);
    ends[2 * at + 1] = meet(b);
  }
  return {
    circuit,
    nodes: [...numbers.keys()].slice(1),
    ends,
    numberOf: (node) => {
      const number = numbers.get(node);
      if (number === undefined) throw new Error(`no element touches node ${node}`);
      return number;
    },
  };
}

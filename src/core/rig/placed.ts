import { type Circuit, earth, type Node } from "#core/circuit/circuit.ts";

/** A name of a part's own, as it stands in the circuit of a rig. */
export const joined = (part: string, node: Node): Node =>
  node === earth ? earth : `${part}: ${node}`;

/** A part's circuit under the names of a rig. */
export const placed = (part: string, circuit: Circuit): Circuit =>
  circuit.map((element) => ({
    ...element,
    name: joined(part, element.name),
    a: joined(part, element.a),
    b: joined(part, element.b),
  }));

import type { Circuit, Element, Node } from "#core/circuit/circuit.ts";
import { resistor } from "#core/parts/boxes.ts";
import type { Edit } from "#core/parts/part.ts";
import type { Ohms } from "#core/units/units.ts";
import { joined } from "./placed.ts";
import type { RigFault } from "./rig-faults.ts";

type Change = Extract<Edit, { readonly edit: "ohms" | "rewire" }>;

/** An edit, and the part whose names it speaks. */
type Own<E extends Edit> = E & { readonly part: string };

/**
 * The circuit after the edits that touch its elements, and the shorts among them. Where two speak of one element's ohms, the larger holds: dirt
 * does not mend what is open.
 */
export function edited(circuit: Circuit, faults: readonly RigFault[]): Circuit {
  const changes = new Map<string, Own<Change>[]>();
  for (const { part, edits } of faults)
    for (const edit of edits) {
      if (edit.edit !== "ohms" && edit.edit !== "rewire") continue;
      const name = joined(part, edit.element);
      changes.set(name, [...(changes.get(name) ?? []), { ...edit, part }]);
    }
  const bridges = faults.flatMap(bridgesOf);
  if (changes.size + bridges.length === 0) return circuit;
  const elements = circuit.map((element) => {
    const own = changes.get(element.name);
    return own === undefined ? element : own.filter(holds).reduce(changed, element);
  });
  return [...elements, ...bridges];
}

/** Of several that set ohms, the one with most. */
const holds = (edit: Change, _: number, all: readonly Change[]): boolean =>
  edit.edit !== "ohms" || all.every((other) => other.edit !== "ohms" || other.ohms <= edit.ohms);

const bridgesOf = ({ part, edits, id }: RigFault): Element[] =>
  edits.flatMap((edit, index) =>
    edit.edit === "bridge"
      ? [resistor(`${id} ${index}`, joined(part, edit.a), joined(part, edit.b), edit.ohms)]
      : [],
  );

/** An element after one edit. */
function changed(element: Element, edit: Own<Change>): Element {
  if (edit.edit === "ohms") return withOhms(element, edit.ohms);
  const at = (node: Node | undefined, before: Node) =>
    node === undefined ? before : joined(edit.part, node);
  return { ...element, a: at(edit.a, element.a), b: at(edit.b, element.b) };
}

function withOhms(element: Element, ohms: Ohms): Element {
  if (element.kind === "capacitor")
    throw new Error(`${element.name} is a capacitor and has no ohms`);
  return { ...element, ohms };
}

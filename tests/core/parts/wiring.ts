import { type Circuit, earth, type Node, open } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { resistor } from "#core/parts/boxes.ts";
import { contactsAt, contactsJoined, type Wiring } from "#core/parts/contacts-joined.ts";
import { type Edit, type Fault, point } from "#core/parts/part.ts";
import type { Ohms } from "#core/units/units.ts";

/** A part's wiring after edits. Plugs of another kind have that kind's contacts. */
export function edited<Part extends Wiring>(part: Part, edits: readonly Edit[]): Part {
  const body = edits.reduce<Circuit>(applied, part.body);
  const plugs = part.plugs.map((plug) => {
    const other = edits.find((edit) => edit.edit === "plug" && edit.plug === plug.name);
    return other?.edit === "plug" ? { ...plug, kind: other.kind } : plug;
  });
  const normals = part.normals?.map((normal) => ({
    ...normal,
    circuit: edits.reduce<Circuit>(applied, normal.circuit),
  }));
  return { ...part, body, plugs, ...(normals === undefined ? {} : { normals }) };
}

function applied(circuit: Circuit, edit: Edit): Circuit {
  if (edit.edit === "bridge")
    return [...circuit, resistor(`${edit.a} ${edit.b}`, edit.a, edit.b, edit.ohms)];
  return circuit.map((element) => {
    if (!("element" in edit) || edit.element !== element.name) return element;
    if (edit.edit === "rewire")
      return { ...element, a: edit.a ?? element.a, b: edit.b ?? element.b };
    return element.kind === "resistor" ? { ...element, ohms: edit.ohms } : element;
  });
}

/** Which contacts of different ends are joined: `near.tip=far.tip`, each pair once, sorted. */
export function pairs(part: Wiring, used: readonly string[] = []): readonly string[] {
  const all = contactsJoined(part, 1, used).flatMap(({ at, contact, to }) =>
    to.map((other) => [point(at, contact), point(other.at, other.contact)].sort().join("=")),
  );
  return [...new Set(all)].sort();
}

/** The same, with every node renamed. */
export const renamed = (all: readonly string[], name: (node: Node) => Node): readonly string[] =>
  all.map((pair) => pair.split("=").map(name).sort().join("=")).sort();

/** What a contact is joined to. */
export const partners = (all: readonly string[], node: Node): readonly Node[] =>
  all
    .map((pair) => pair.split("="))
    .filter((pair) => pair.includes(node))
    .flatMap((pair) => pair.filter((other) => other !== node))
    .sort();

/** Ohms between two contacts by the solver: one volt behind an ohm into the one, the other on earth. */
export function ohmsBetween(part: Wiring, from: Node, to: Node): Ohms {
  const nodes = new Set([
    ...part.body.flatMap(({ a, b }) => [a, b]),
    ...contactsAt(part).map(({ at, contact }) => point(at, contact)),
  ]);
  const circuit: Circuit = [
    ...part.body.filter(({ kind }) => kind === "resistor"),
    ...[...nodes].map((node) => resistor(`${node} air`, node, earth, open)),
    { kind: "source", name: "meter", a: from, b: earth, ohms: 1, drive: { meter: 1 } },
    resistor("ground", to, earth, 1e-6),
  ];
  const volts = solve(circuit, 0, ["meter"])[0]?.(from).re ?? Number.NaN;
  return volts / (1 - volts);
}

/** The fault of a part by its place and name. */
export function faultOf({ faults }: { readonly faults: readonly Fault[] }, id: string): Fault {
  const fault = faults.find(({ at, name }) => `${at} / ${name}` === id);
  if (fault === undefined) throw new Error(`no fault ${id}`);
  return fault;
}

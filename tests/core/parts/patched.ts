import type { Circuit, Node } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { resistor } from "#core/parts/boxes.ts";
import type { Fault, Part } from "#core/parts/part.ts";
import { edited } from "#core/rig/edited.ts";
import { midband } from "#core/rig/midband.ts";
import { joined, placed } from "#core/rig/placed.ts";
import { subtract } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";

/** Contacts of one part soldered to contacts of another, without a lead between. */
export interface Patch {
  readonly from: Part;
  readonly to: Part;
  readonly wires: readonly (readonly [from: Node, to: Node])[];
  /** A fault of either end. */
  readonly fault?: readonly [end: "from" | "to", fault: Fault];
  readonly at?: Hertz;
}

/** The controls of a part, as its faults leave them. */
export function controlled(part: Part, faults: readonly Fault[]): (name: string) => number {
  const edits = faults.flatMap((fault) => fault.edits);
  const values = Object.fromEntries(
    edits.flatMap((edit) => (edit.edit === "control" ? [[edit.control, edit.value]] : [])),
  );
  return (name) => {
    const value = values[name] ?? part.controls[name];
    if (value === undefined) throw new Error(`no control named ${name}`);
    return value;
  };
}

/** The gains inside a part, by the signals it sends. */
export const insideOf = (part: Part, ...faults: readonly Fault[]) =>
  part.through?.(controlled(part, faults), midband) ?? {};

/** A fault of a part, by where it is and what it is called. */
export function faultAt(part: Part, at: string, name: string): Fault {
  const fault = part.faults.find((one) => one.at === at && one.name === name);
  if (fault === undefined) throw new Error(`no fault ${name} at ${at}`);
  return fault;
}

const socketOf = (node: Node): string => node.slice(0, node.lastIndexOf("."));

/** What is there of a part while these sockets are in use, its sources as the controls leave them. */
function circuitOf(part: Part, used: readonly string[], faults: readonly Fault[]): Circuit {
  const control = controlled(part, faults);
  const sockets = part.sockets.flatMap(({ circuit }) => circuit);
  const normals = (part.normals ?? []).flatMap(({ whileEmpty, circuit }) =>
    whileEmpty.some((socket) => used.includes(socket)) ? [] : circuit,
  );
  return [...part.body, ...sockets, ...normals].map((element) => {
    if (element.kind !== "source" || element.level === undefined) return element;
    const by = control(element.level);
    const drive = Object.entries(element.drive).map(([bus, gain]) => [bus, gain * by]);
    return { ...element, drive: Object.fromEntries(drive) };
  });
}

/** Rows: what the second part takes in. Columns: signals of the first by name. */
export function patched(
  { from, to, wires, fault, at = midband }: Patch,
  ...buses: string[]
): Matrix {
  const of = (end: "from" | "to") => (fault?.[0] === end ? [fault[1]] : []);
  const circuit = [
    ...placed(
      "from",
      circuitOf(
        from,
        wires.map(([node]) => socketOf(node)),
        of("from"),
      ),
    ),
    ...placed(
      "to",
      circuitOf(
        to,
        wires.map(([, node]) => socketOf(node)),
        of("to"),
      ),
    ),
    ...wires.map(([a, b], index) =>
      resistor(`wire ${index}`, joined("from", a), joined("to", b), 0.05),
    ),
  ];
  const faults = (["from", "to"] as const).flatMap((part) =>
    of(part).map((one) => ({ ...one, part, id: one.name, place: part })),
  );
  const voltages = solve(edited(circuit, faults), at, buses);
  return to.takes.map(({ plus, minus }) =>
    voltages.map((volts) => subtract(volts(joined("to", plus)), volts(joined("to", minus)))),
  );
}

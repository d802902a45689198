import type { Circuit, Node } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { subtract } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import { midband } from "./midband.ts";
import { reachInto } from "./reach.ts";
import { type BuiltPart, type BuiltRig, wornAt } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";
import type { Step } from "./steps.ts";
import { stretchInto } from "./stretch.ts";

/** The circuit that feeds a part, and whatever else hangs on it. */
export function circuitInto(rig: BuiltRig, part: string): Step {
  const { from, wires, takers, ends } = reachInto(rig, part);
  const outputs = ends.filter(({ into }) => into === from).map(({ socket }) => socket);
  const inputs = new Map(
    takers.map((id) => [
      id,
      rig.part(id).sockets.flatMap(({ name, side }) => (side === "in" ? [name] : [])),
    ]),
  );
  const takes = ({ part: id, at }: RigFault) =>
    takers.includes(id) &&
    (inputs.get(id)?.includes(at) || (rig.part(id).plugs.length > 0 && at !== "settings"));
  const along = [...wires, ...takers];
  return {
    id: `into ${takers.join(" and ")}`,
    owns: (fault) =>
      wires.includes(fault.part) ||
      takes(fault) ||
      (fault.part === from && outputs.includes(fault.at)),
    shape: shapeOf(stretchInto(rig, part, []).circuit),
    called: ({ part: id, name, at }) =>
      id === from
        ? `output ${outputs.indexOf(at)}: ${name}`
        : `${along.indexOf(id)} ${at}: ${name}`,
    branch: (position) => takers.indexOf(takerTo(rig, takers, position)),
    behaviour: (faults, branch, at) => ({
      ...straight,
      gains: solved(rig, takers[branch] ?? part, faults, at),
    }),
  };
}

/** Which of some parts that take from one circuit is on the way to a position. */
function takerTo(rig: BuiltRig, takers: readonly string[], position: string): string {
  let part = wornAt(rig, position);
  while (!takers.includes(part)) part = reachInto(rig, part).from;
  return part;
}

/** A circuit without its names: which values stand between which nodes. */
function shapeOf(circuit: Circuit): string {
  const nodes = new Map<Node, number>();
  const at = (node: Node) => nodes.get(node) ?? nodes.set(node, nodes.size).size - 1;
  return JSON.stringify(
    circuit.map((element) => [
      element.kind === "capacitor" ? element.farads : element.ohms,
      at(element.a),
      at(element.b),
      element.kind === "source" ? element.drive : element.kind,
    ]),
  );
}

const buses = new WeakMap<BuiltPart, readonly string[]>();

/** The names of the signals inside a box, in the order of its rows. */
export function busesOf(rig: BuiltRig, part: string): readonly string[] {
  const box = rig.part(part);
  const names =
    buses.get(box) ?? Object.keys(box.through?.(controlOf(rig, part, []), midband) ?? {});
  buses.set(box, names);
  return names;
}

const healthy = new WeakMap<BuiltRig, Map<string, Matrix>>();

/**
 * Rows: what the part takes in. Columns: the signals inside the box that feeds it. What a circuit does with nothing wrong is remembered: most of
 * a way is whole.
 */
export function solved(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[],
  at: Hertz = midband,
): Matrix {
  if (faults.length > 0) return newlySolved(rig, part, faults, at);
  const known = healthy.get(rig) ?? new Map<string, Matrix>();
  healthy.set(rig, known);
  const key = `${part} ${at}`;
  const gains = known.get(key) ?? newlySolved(rig, part, [], at);
  known.set(key, gains);
  return gains;
}

function newlySolved(rig: BuiltRig, part: string, faults: readonly RigFault[], at: Hertz): Matrix {
  const { from, circuit } = stretchInto(rig, part, faults);
  const voltages = solve(circuit, at, busesOf(rig, from));
  return rig
    .part(part)
    .takes.map(({ plus, minus }) =>
      voltages.map((volts) => subtract(volts(`${part}: ${plus}`), volts(`${part}: ${minus}`))),
    );
}

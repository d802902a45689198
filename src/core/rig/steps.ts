import type { Circuit, Node } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { real, subtract } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Behaviour, straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import { type BuiltRig, listenerOf, operatorId } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";
import { cordsInto, stretchInto } from "./stretch.ts";

/** Most faults are the same at every frequency; where they are not, this is the middle of the idents. */
export const midband: Hertz = 1000;

/** One step on the way from the programme to an ear: a circuit, a box's inside, or a person. */
export interface Step {
  readonly id: string;
  /** The faults that change this step, and no other. */
  readonly owns: (fault: RigFault) => boolean;
  /** Two steps of one shape, with faults of the same names, do the same under the same of them. */
  readonly shape: string;
  /** What it does under those of them that are there. */
  readonly behaviour: (faults: readonly RigFault[]) => Behaviour;
}

/** The way to a position, from the operator to the listener. */
export function stepsTo(rig: BuiltRig, position: string): readonly Step[] {
  const wears = rig.positions.find(({ id }) => id === position)?.wears;
  if (wears === undefined) throw new Error(`the rig has no position named ${position}`);
  const steps: Step[] = [person(rig, listenerOf(position))];
  for (let part: string | undefined = wears; part !== undefined; ) {
    const from = feeds(rig, part);
    if (from !== undefined) steps.push(circuitInto(rig, part, from));
    if (from !== undefined) steps.push(inside(rig, from));
    part = from;
  }
  return [...steps, person(rig, operatorId)].reverse();
}

/** The part whose outputs feed another, or nothing for where the programme comes in. */
function feeds(rig: BuiltRig, part: string): string | undefined {
  const { plugs, takes } = rig.part(part);
  return plugs.length === 0 && takes.length === 0 ? undefined : stretchInto(rig, part, []).from;
}

const gains = (matrix: Matrix): Behaviour => ({ ...straight, gains: matrix });

function circuitInto(rig: BuiltRig, part: string, from: string): Step {
  const cords = cordsInto(rig, part);
  const outputs = rig.plugged.filter((end) => cords.includes(end.part) && end.into === from);
  const inputs = rig
    .part(part)
    .sockets.filter(({ side }) => side === "in")
    .map(({ name }) => name);
  return {
    id: `into ${part}`,
    owns: (fault) =>
      cords.includes(fault.part) ||
      (fault.part === part && inputs.includes(fault.at)) ||
      (fault.part === from && outputs.some(({ socket }) => socket === fault.at)),
    shape: shapeOf(stretchInto(rig, part, []).circuit),
    behaviour: (faults) => gains(solved(rig, part, faults)),
  };
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

/** The names of the signals inside a box, in the order of its rows. */
const busesOf = (rig: BuiltRig, part: string): readonly string[] =>
  Object.keys(rig.part(part).through?.(controlOf(rig, part, [])) ?? {});

/** Rows: what the part takes in. Columns: the signals inside the box that feeds it. */
export function solved(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[],
  at: Hertz = midband,
): Matrix {
  const { from, circuit } = stretchInto(rig, part, faults);
  const buses = busesOf(rig, from);
  const voltages = solve(circuit, at, buses);
  return rig
    .part(part)
    .takes.map(({ plus, minus }) =>
      voltages.map((volts) => subtract(volts(`${part}: ${plus}`), volts(`${part}: ${minus}`))),
    );
}

function inside(rig: BuiltRig, part: string): Step {
  return {
    id: `inside ${part}`,
    shape: `inside ${part}`,
    owns: (fault) => fault.part === part && fault.at === "settings",
    behaviour: (faults) => {
      const buses = rig.part(part).through?.(controlOf(rig, part, faults)) ?? {};
      return gains(Object.values(buses).map((row) => row.map(real)));
    },
  };
}

function person(rig: BuiltRig, part: string): Step {
  const has = (name: string) => name in rig.part(part).controls;
  return {
    id: part,
    shape: rig.part(part).kind,
    owns: (fault) => fault.part === part,
    behaviour: (faults) => {
      const control = controlOf(rig, part, faults);
      if (!has("worn")) return { ...straight, mirrors: control("mirrors") === 1 };
      return {
        ...straight,
        worn: control("worn"),
        hearing: [control("left hearing"), control("right hearing")],
        mirrors: control("mirrors") === 1,
      };
    },
  };
}

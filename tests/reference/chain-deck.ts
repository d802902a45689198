import type { Probe } from "#core/parts/part.ts";
import { controlOf } from "#core/rig/controls.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { cordsInto, stretchInto } from "#core/rig/stretch.ts";
import { type Block, blockWriter, signalNode } from "./deck.ts";

type Writer = ReturnType<typeof blockWriter>;

/** Everything a fault of which changes the circuit into a part. */
export const partsInto = (rig: BuiltRig, part: string): readonly string[] => [
  ...cordsInto(rig, part),
  part,
  stretchInto(rig, part, []).from,
];

const into = (rig: BuiltRig, part: string, faults: readonly RigFault[]) =>
  stretchInto(
    rig,
    part,
    faults.filter((fault) => partsInto(rig, part).includes(fault.part)),
  );

/** What a part takes in, under the writer's names. */
const taken = (rig: BuiltRig, part: string, { node }: Writer): Probe[] =>
  rig.part(part).takes.map(({ plus, minus }) => ({
    plus: node(`${part}: ${plus}`),
    minus: node(`${part}: ${minus}`),
  }));

/** The signals inside a part, in the order of the columns of the matrix from it. */
export const busesOf = (rig: BuiltRig, part: string): readonly string[] =>
  Object.keys(rig.part(part).through?.(controlOf(rig, part, [])) ?? {});

/** One stretch by itself: each signal of the box that drives it is a signal of the deck. */
export function stretchBlock(rig: BuiltRig, part: string, faults: readonly RigFault[]): Block {
  const writer = blockWriter();
  const { circuit, from } = into(rig, part, faults);
  const buses = busesOf(rig, from);
  writer.circuit(circuit, (signal) => signalNode(buses.indexOf(signal)));
  return writer.block(taken(rig, part, writer));
}

/**
 * The whole way from the programme to the drivers as one circuit, amplifiers as controlled sources: what the simulator makes of it
 * owes nothing to how the core cuts the way into stretches and multiplies their matrices.
 */
export function chainBlock(rig: BuiltRig, wears: string, faults: readonly RigFault[]): Block {
  const writer = blockWriter();
  const programme = [0, 1].map((side) => ({ plus: signalNode(side), minus: "0" }));
  const write = (part: string): Probe[] => {
    const { circuit, from } = into(rig, part, faults);
    const { plugs, takes } = rig.part(from);
    const inputs = plugs.length + takes.length === 0 ? programme : write(from);
    const gains = rig.part(from).through?.(controlOf(rig, from, faults)) ?? {};
    const buses = new Map(
      Object.entries(gains).map(([name, row]) => [
        name,
        writer.sum(
          "0",
          inputs.map((probe, index) => [probe, row[index] ?? 0] as const),
        ),
      ]),
    );
    writer.circuit(circuit, (signal) => buses.get(signal) ?? "nowhere");
    return taken(rig, part, writer);
  };
  return writer.block(write(wears));
}

import type { Gain, Probe } from "#core/parts/part.ts";
import { busesOf } from "#core/rig/circuit-step.ts";
import { controlOf } from "#core/rig/controls.ts";
import { isStandIn } from "#core/rig/earths.ts";
import { midband } from "#core/rig/midband.ts";
import { isFed, reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { atTheEars } from "./acoustics.ts";
import { type Block, blockWriter, signalNode, type Writer } from "./deck.ts";

/** Everything a fault of which changes the circuit into a part. */
export const partsInto = (rig: BuiltRig, part: string): readonly string[] => [
  ...reachInto(rig, part).wires,
  ...reachInto(rig, part).takers,
  reachInto(rig, part).from,
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

/** A gain without a phase. What has one is written as the filter it is. */
function plain(gain: Gain): number {
  if (typeof gain === "number") return gain;
  if (gain.im !== 0) throw new Error("a controlled source has a real gain");
  return gain.re;
}

/** One stretch by itself: each signal of the box that drives it is a signal of the deck. */
export function stretchBlock(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[],
  signals: readonly string[] = busesOf(rig, reachInto(rig, part).from),
): Block {
  const writer = blockWriter();
  writer.circuit(into(rig, part, faults).circuit, (signal) =>
    signals.includes(signal) ? signalNode(signals.indexOf(signal)) : undefined,
  );
  return writer.block(taken(rig, part, writer));
}

/** Where the signals of a deck of the whole rig stand. */
interface Outside {
  /** The two sides of the programme. */
  readonly programme: readonly Probe[];
  readonly bus: (signal: string) => string | undefined;
}

/**
 * Everything in a rig as one circuit, amplifiers as controlled sources: what the simulator makes of it owes nothing to how the core cuts it
 * into stretches, stands in for what lies beyond them and multiplies their matrices. Answers what a part takes in.
 */
function wholeRig(rig: BuiltRig, faults: readonly RigFault[], writer: Writer, outside: Outside) {
  const buses = new Map<string, ReadonlyMap<string, string>>();
  const signalsIn = (box: string): ReadonlyMap<string, string> => {
    const inputs = isFed(rig, box) ? written(box) : outside.programme;
    const known = buses.get(box) ?? boxed(rig, box, faults, writer, inputs);
    buses.set(box, known);
    return known;
  };
  const written = (part: string): readonly Probe[] => {
    const { circuit, from } = into(rig, part, faults);
    const signals = signalsIn(from);
    writer.circuit(
      circuit.filter((element) => !isStandIn(element)),
      (signal) => signals.get(signal) ?? outside.bus(signal),
    );
    return taken(rig, part, writer);
  };
  for (const { id } of rig.parts) if (rig.part(id).takes.length > 0 && isFed(rig, id)) written(id);
  return (part: string): readonly Probe[] => taken(rig, part, writer);
}

/** The signals inside a box, by its gains from what it takes in. */
function boxed(
  rig: BuiltRig,
  id: string,
  faults: readonly RigFault[],
  writer: Writer,
  inputs: readonly Probe[],
): ReadonlyMap<string, string> {
  const gains = rig.part(id).through?.(controlOf(rig, id, faults), midband) ?? {};
  return new Map(
    Object.entries(gains).map(([name, row]) => [
      name,
      writer.sum(
        "0",
        inputs.map((probe, index) => [probe, plain(row[index] ?? 0)] as const),
      ),
    ]),
  );
}

/** From the programme to the ears of everybody in a rig, two rows each, with nobody who hears or wears it wrongly. */
export function rigBlock(rig: BuiltRig, faults: readonly RigFault[]): Block {
  const writer = blockWriter();
  const programme = [0, 1].map((side) => ({ plus: signalNode(side), minus: "0" }));
  const whole = wholeRig(rig, faults, writer, { programme, bus: () => undefined });
  const ears = rig.positions.flatMap(({ wears }): readonly Probe[] => {
    const { kind, through } = rig.part(wears);
    if (through === undefined) return whole(wears);
    if (kind === "in-ears") return atTheEars(rig, wears, faults, writer, whole(wears));
    const gained = boxed(rig, wears, faults, writer, whole(wears));
    return [...gained.values()].map((plus) => ({ plus, minus: "0" }));
  });
  return writer.block(ears);
}

/** A whole rig with no programme: what a part takes in of the only other signal. */
export function outsideBlock(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[],
  signal: string,
): Block {
  const writer = blockWriter();
  const programme = [0, 1].map(() => ({ plus: "0", minus: "0" }));
  const bus = (name: string) => (name === signal ? signalNode(0) : undefined);
  return writer.block(wholeRig(rig, faults, writer, { programme, bus })(part));
}

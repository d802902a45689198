import { bench, describe } from "vitest";
import type { Circuit } from "#core/circuit/circuit.ts";
import { circuitInto, solved } from "#core/rig/circuit-step.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { stretchBlock } from "#tests/reference/chain-deck.ts";
import type { Block } from "#tests/reference/deck.ts";
import { installed, run } from "#tests/reference/ngspice.ts";
import { steadyFaults, takersOf } from "#tests/reference/simulated.ts";

const names = Array.from({ length: 16 }, (_, at) => `seat ${at + 1}`);
const drawing = fromHeadphoneSocket("sixteen at a table", names);

/** A circuit of the rig: what takes from it, and the one fault that it has. */
interface Single {
  readonly part: string;
  readonly fault: RigFault;
}

/** Every fault of the rig, with every circuit that it changes; those of sixteen seats are alike in shape, and each is there. */
const singlesOf = (rig: BuiltRig): readonly Single[] => {
  const faults = steadyFaults(rig);
  return takersOf(rig).flatMap((part) =>
    faults.filter(circuitInto(rig, part).owns).map((fault) => ({ part, fault })),
  );
};

const rig = build(drawing);
const singles = singlesOf(rig);

/** The signals that stand in a circuit. */
const signalsOf = (circuit: Circuit): readonly string[] => [
  ...new Set(circuit.flatMap((one) => (one.kind === "source" ? Object.keys(one.drive) : []))),
];

const blocks = singles.map(({ part, fault }): Block => {
  const signals = signalsOf(stretchInto(rig, part, [fault]).circuit);
  return stretchBlock(
    rig,
    part,
    [fault],
    signals.filter((name) => name !== "mains hum"),
  );
});

describe(`${singles.length} circuits: every single fault of a rig of sixteen positions, at 1 kHz`, () => {
  bench("solved here, from the rig as drawn (bound: 50 ms)", () => {
    const fresh = build(drawing);
    for (const { part, fault } of singles) solved(fresh, part, [fault]);
  });
  if (!installed()) return;
  bench("one run of ngspice, two signals each", () => {
    run(blocks, 2, [1000]);
  });
  bench("ngspice in decks of forty circuits, which it likes better", () => {
    for (let at = 0; at < blocks.length; at += 40) run(blocks.slice(at, at + 40), 2, [1000]);
  });
});

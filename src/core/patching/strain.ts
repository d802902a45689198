import type { Source } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { hum } from "#core/parts/boxes.ts";
import { midband } from "#core/rig/midband.ts";
import { reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { size, subtract } from "#core/units/complex.ts";
import type { Ohms } from "#core/units/units.ts";

/** An output stage that drives too little resistance. */
export interface Strain {
  readonly part: string;
  readonly socket: string;
  /** What it drives, with the programme at its hardest for it. */
  readonly ohms: Ohms;
}

/** Less than this is a short to an output made for headphones or lines. Common practice, no source. */
const least: Ohms = 6;

/** The outputs into a part that are shorted, or drive one another: each leg against the ohms it sees. */
export function strainsInto(
  rig: BuiltRig,
  part: string,
  faults: readonly RigFault[] = [],
): readonly Strain[] {
  const { circuit, from } = stretchInto(rig, part, faults);
  const legs = circuit.filter(
    (element): element is Source => element.kind === "source" && !(hum in element.drive),
  );
  const buses = [...new Set(legs.flatMap(({ drive }) => Object.keys(drive)))];
  const voltages = solve(circuit, midband, buses);
  const sockets = socketsOf(rig, part, from);
  return legs.flatMap((leg) => {
    const ohms = Math.min(...signs(buses.length).map((sign) => load(leg, buses, voltages, sign)));
    const socket = sockets.find((name) => leg.name.startsWith(`${from}: ${name} `));
    return ohms < least && socket !== undefined ? [{ part: from, socket, ohms }] : [];
  });
}

const socketsOf = (rig: BuiltRig, part: string, from: string): readonly string[] => [
  ...new Set(
    reachInto(rig, part)
      .ends.filter(({ into }) => into === from)
      .map(({ socket }) => socket),
  ),
];

/** Every way in which so many programmes can push with or against the first. */
const signs = (count: number): readonly (readonly number[])[] =>
  count <= 1
    ? [[1]]
    : signs(count - 1).flatMap((some) => [
        [...some, 1],
        [...some, -1],
      ]);

type Voltages = ReturnType<typeof solve>;

/** What one leg drives while each bus has one volt of a sign. Infinite where it drives nothing. */
function load(
  { a, b, ohms, drive }: Source,
  buses: readonly string[],
  voltages: Voltages,
  sign: readonly number[],
): Ohms {
  let own = 0;
  let re = 0;
  let im = 0;
  for (const [index, bus] of buses.entries()) {
    const volts = voltages[index];
    const by = sign[index] ?? 1;
    own += by * (drive[bus] ?? 0);
    if (volts === undefined) continue;
    const across = subtract(volts(a), volts(b));
    re += by * across.re;
    im += by * across.im;
  }
  const pushed = Math.abs(own);
  if (pushed < 1e-9) return Number.POSITIVE_INFINITY;
  const current = size({ re: own - re, im: -im }) / ohms;
  return current < 1e-12 ? Number.POSITIVE_INFINITY : size({ re, im }) / current;
}

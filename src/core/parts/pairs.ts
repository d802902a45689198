import type { Ohms } from "#core/units/units.ts";
import type { Fault, Socket } from "./part.ts";
import { deadOutput } from "./socket-faults.ts";
import { type Balancing, type Connector, monoOutput } from "./stages.ts";

/** A pair of outputs, one signal each; sockets and signals bear the same names. */
export interface Pair {
  readonly names: readonly [left: string, right: string];
  readonly connector: Connector;
  readonly by: Balancing;
  /** Of each leg; 0 for what is usual. */
  readonly ohms: Ohms;
  /** What their levels hang on, and what they are taken for. */
  readonly said?: Pick<Socket, "ties" | "mistakenFor" | "harms">;
  /** The signals, where they are not called as the sockets are. */
  readonly buses?: readonly [left: string, right: string];
}

/** The sockets of a pair. */
export const pairSockets = ({ names, buses = names, said, ...stage }: Pair): readonly Socket[] =>
  names.map((name, side) => ({
    name,
    side: "out",
    partner: names[side === 0 ? 1 : 0],
    ...said,
    ...monoOutput({ name, bus: buses[side === 0 ? 0 : 1], ...stage }),
  }));

/** Either of a pair dead. */
export const pairFaults = ({
  names,
  connector,
}: Pick<Pair, "names" | "connector">): readonly Fault[] =>
  names.map((name) => deadOutput(name, connector));

import { open } from "#core/circuit/circuit.ts";
import { driven, resistor } from "#core/parts/boxes.ts";
import type { Part, Socket } from "#core/parts/part.ts";
import type { Ohms } from "#core/units/units.ts";

/** The signals inside a mixer, by their place in its matrix. */
export const [mainLeft, mainRight, send, phonesLeft, phonesRight] = [0, 1, 2, 3, 4];

/** Below this a table says 'nothing', decibels. */
export const silent = -60;

/** A mixer with another output stage than the catalogue's behind some of its sockets. */
const withStage =
  (sockets: readonly string[], stage: (name: string) => Socket["circuit"]) =>
  (part: Part): Part => ({
    ...part,
    sockets: part.sockets.map((socket) =>
      sockets.includes(socket.name) ? { ...socket, circuit: stage(socket.name) } : socket,
    ),
  });

/** Quasi-balanced: the ring is the signal's return, and the sleeve is not connected inside. */
export const quasiBalanced = withStage(["send"], (name) => [
  driven(name, "tip", 150, { send: 1 }),
  resistor(`${name} ring`, `${name}.ring`, "chassis", 150),
  resistor(`${name} sleeve`, `${name}.sleeve`, "chassis", open),
]);

/** Only the difference of the legs is fixed: two volts, behind the ohms of both. */
export const floatingStage = (names: readonly string[], leg: Ohms) =>
  withStage(names, (name) => [
    { ...driven(name, "tip", 2 * leg, { [name]: 2 }), b: `${name}.ring` },
    resistor(`${name} ring`, `${name}.ring`, "chassis", open),
    resistor(`${name} bush`, `${name}.sleeve`, "chassis", 0.02),
  ]);

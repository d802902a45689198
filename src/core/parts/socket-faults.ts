import { type Circuit, open, short } from "#core/circuit/circuit.ts";
import type { Ohms, Seconds } from "#core/units/units.ts";
import type { FaultName } from "./fault-names.ts";
import type { Fault } from "./part.ts";
import type { Contact } from "./plugs.ts";
import { type Connector, legsOf } from "./stages.ts";
import { commonOf, type PhonesKind } from "./stereo-outputs.ts";
import { setFault } from "./switch-faults.ts";

/** Taking another output instead. Handbook, section 8. */
const another: Seconds = 20;
/** Plugging in and out five times. Handbook, section 8. */
const fiveTimes: Seconds = 10;
/** A return that wear and oxide have left in a headphone socket: weak in the middle, wide. */
const wear: Ohms = 30;

/** A contact that no longer drives: its spring or its amplifier. */
const dead = (name: FaultName, socket: string, contact: Contact): Fault => ({
  name,
  at: socket,
  edits: [{ edit: "ohms", element: `${socket} ${contact}`, ohms: open }],
  weight: 4,
  slot: `${socket} ${contact}`,
  seen: false,
  repair: another,
});

/** The return spring of a socket, worn or oxidised, to so many ohms. Odds: common practice, no source. */
export const wornReturn = (socket: string, contact: Contact, ohms: Ohms = wear): Fault => ({
  name: "return spring of the socket worn",
  at: socket,
  edits: [{ edit: "ohms", element: `${socket} bush`, ohms }],
  weight: 4,
  slot: `${socket} ${contact}`,
  seen: false,
  repair: fiveTimes,
  cleans: true,
});

/** What wears out at a headphone socket. Odds: common practice, no source. */
export const phonesFaults = (socket: string, kind: PhonesKind = "TRS"): readonly Fault[] => [
  dead("left side of the output dead", socket, "tip"),
  dead("right side of the output dead", socket, "ring"),
  wornReturn(socket, commonOf(kind)),
];

/** An output with one signal that has died. Odds: common practice, no source. */
export const deadOutput = (socket: string, connector: Connector | "RCA"): Fault =>
  dead("output dead", socket, connector === "RCA" ? "tip" : legsOf[connector].hot);

/**
 * A normal from the left of two jacks to the right: oxidised so that it does not close, or bent so that it does not open when something is
 * plugged in. Said of the left jack, the one in use when it matters. Odds: common practice, no source.
 */
export const normalFaults = (left: string, normal: Circuit): readonly Fault[] => {
  const base = { at: left, slot: `${left} normal`, seen: false } as const;
  return [
    {
      ...base,
      name: "normal does not close",
      edits: normal.map(({ name }) => ({ edit: "ohms", element: name, ohms: open })),
      weight: 15,
      repair: fiveTimes,
      cleans: true,
    },
    {
      ...base,
      name: "normal does not open",
      edits: normal.map(({ a, b }) => ({ edit: "bridge", a, b, ohms: short })),
      weight: 5,
      repair: another,
    },
  ];
};

/** The two sides of a volume knob, as controls of a socket. */
export const volumeOf = (socket: string): readonly [left: string, right: string] => [
  `${socket} left volume`,
  `${socket} right volume`,
];

/** Six decibels between the sides, near the bottom of a ganged knob (common practice, no source). */
const uneven = 0.5;

/** A volume knob of a headphone socket, for both sides at once: down, or uneven near its bottom. Odds: common practice, no source. */
export const volumeFaults = (socket: string): readonly Fault[] => {
  const [left, right] = volumeOf(socket);
  const knob = { at: socket, slot: `${socket} volume` };
  const hidden = { ...knob, seen: false, repair: 15 };
  return [
    setFault("volume down", { [left]: 0, [right]: 0 }, 80, knob),
    setFault("volume knob uneven, left weaker", { [left]: uneven }, 12, hidden),
    setFault("volume knob uneven, right weaker", { [right]: uneven }, 12, hidden),
  ];
};

/** The volume controls of sockets, all the way up. */
export const volumesUp = (sockets: readonly string[]): Readonly<Record<string, number>> =>
  Object.fromEntries(sockets.flatMap(volumeOf).map((control) => [control, 1]));

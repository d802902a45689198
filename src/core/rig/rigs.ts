import { outputName } from "#core/parts/amplifier.ts";
import type { Connection, Position, Rig, RigPart } from "./rig.ts";

const seats = ["host", "reader", "fiddle", "guest", "desk"];

/** Headphones at each output of an amplifier, one for each name. */
function listeners(names: readonly string[]) {
  const positions = names.map(
    (name, index): Position => ({
      id: `position ${index + 1}`,
      name: `${index + 1} ${name}`,
      wears: `headphones ${index + 1}`,
    }),
  );
  return {
    positions,
    parts: positions.map(({ wears }): RigPart => ({ id: wears, kind: "headphones" })),
    plugged: positions.map(
      ({ wears }, index): Connection => ({
        part: wears,
        plug: "plug",
        into: "amplifier",
        socket: outputName(index),
      }),
    ),
  };
}

/** A laptop on two channels of a mixer. */
const desk: readonly Connection[] = [
  { part: "insert lead", plug: "stem", into: "laptop", socket: "phones" },
  { part: "insert lead", plug: "left", into: "mixer", socket: "1" },
  { part: "insert lead", plug: "right", into: "mixer", socket: "2" },
];

/** Laptop, mixer, headphone socket, amplifier, one set of headphones for each name. */
export function fromHeadphoneSocket(name: string, names: readonly string[]): Rig {
  const far = listeners(names);
  return {
    name,
    parts: [
      { id: "laptop", kind: "laptop" },
      { id: "insert lead", kind: "insert Y", settings: { stemSize: "3.5 mm" } },
      { id: "mixer", kind: "mixer", settings: { balancing: "actively balanced" } },
      { id: "feed lead", kind: "TRS lead" },
      { id: "amplifier", kind: "headphone amplifier", settings: { outputs: names.length } },
      ...far.parts,
    ],
    plugged: [
      ...desk,
      { part: "feed lead", plug: "near", into: "mixer", socket: "phones" },
      { part: "feed lead", plug: "far", into: "amplifier", socket: "in" },
      ...far.plugged,
    ],
    positions: far.positions,
  };
}

/** The same from the main pair, by an insert lead the other way round. */
export function fromMainPair(name: string, names: readonly string[]): Rig {
  const rig = fromHeadphoneSocket(name, names);
  return {
    ...rig,
    parts: rig.parts.map((part) =>
      part.id === "feed lead" ? { ...part, kind: "insert Y" } : part,
    ),
    plugged: [
      ...rig.plugged.filter(({ part }) => part !== "feed lead"),
      { part: "feed lead", plug: "left", into: "mixer", socket: "main left" },
      { part: "feed lead", plug: "right", into: "mixer", socket: "main right" },
      { part: "feed lead", plug: "stem", into: "amplifier", socket: "in" },
    ],
  };
}

/** One set of headphones straight into a laptop. */
export const straightIn: Rig = {
  name: "Straight into the laptop",
  parts: [
    { id: "laptop", kind: "laptop" },
    { id: "headphones 1", kind: "headphones", settings: { size: "3.5 mm" } },
  ],
  plugged: [{ part: "headphones 1", plug: "plug", into: "laptop", socket: "phones" }],
  positions: [{ id: "position 1", name: "1 you", wears: "headphones 1" }],
};

/** The evening of our own making that is shown, and simulated. */
export const example = fromHeadphoneSocket("Tallow Hall story evening", seats);

/** What the first screen offers. A village hall's story evening, made up for this program. */
export const builtInRigs: readonly Rig[] = [
  example,
  fromMainPair("Tallow Hall, from the main pair", seats),
  straightIn,
];

import { earth, open } from "#core/circuit/circuit.ts";
import { floating, resistor } from "#core/parts/boxes.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Balancing } from "#core/parts/stages.ts";
import type { Connection, Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";

/** A computer straight into an amplifier by a stereo lead of 3 m. */
export const laptopIntoAmplifier: Rig = {
  name: "laptop into an amplifier",
  parts: [
    { id: "laptop", kind: "laptop" },
    { id: "lead", kind: "TRS lead", settings: { nearSize: "3.5 mm" } },
    { id: "amplifier", kind: "headphone amplifier" },
    { id: "headphones", kind: "headphones" },
  ],
  plugged: [
    { part: "lead", plug: "near", into: "laptop", socket: "phones" },
    { part: "lead", plug: "far", into: "amplifier", socket: "in" },
    { part: "headphones", plug: "plug", into: "amplifier", socket: "output 1" },
  ],
  positions: [{ id: "position 1", name: "1 one", wears: "headphones" }],
};

type Feed = readonly (readonly [plug: string, into: string, socket: string])[];

/** Laptop, mixer, a feed as told, amplifier, one set of headphones. */
export function fed(balancing: Balancing, kind: PartKind, feed: Feed): Rig {
  const rig = fromHeadphoneSocket(`${balancing}, ${kind}`, ["one"]);
  return {
    ...rig,
    parts: rig.parts.map((part) => {
      if (part.id === "mixer") return { ...part, settings: { balancing } };
      return part.id === "feed lead" ? { ...part, kind } : part;
    }),
    plugged: [
      ...rig.plugged.filter(({ part }) => part !== "feed lead"),
      ...feed.map(
        ([plug, into, socket]): Connection => ({ part: "feed lead", plug, into, socket }),
      ),
    ],
  };
}

/** A lead with one plug at each end, from a socket of the mixer. */
export const fromSocket = (socket: string): Feed => [
  ["near", "mixer", socket],
  ["far", "amplifier", "in"],
];

/** An insert Y from the main pair. */
export const fromPair: Feed = [
  ["left", "mixer", "main left"],
  ["right", "mixer", "main right"],
  ["stem", "amplifier", "in"],
];

/** On a battery: what is left between a box and earth. */
export const battery = resistor("air", "chassis", earth, open);

/** On a plug-top supply. */
export const plugTop = floating();

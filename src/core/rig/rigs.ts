import { outputName } from "#core/parts/amplifier.ts";
import { byName, mixerDesk, part, plug, seated, sets, together } from "./pieces.ts";
import type { Rig } from "./rig.ts";

const seats = ["host", "reader", "fiddle", "guest", "desk"];

/** The hall's own mixer drives both legs of its outputs. */
const desk = mixerDesk(
  { source: "laptop", lead: "insert lead", mixer: "mixer" },
  { balancing: "actively balanced" },
);

/** Laptop, mixer, headphone socket, amplifier, one set of headphones for each name. */
export const fromHeadphoneSocket = (name: string, names: readonly string[]): Rig =>
  seated(
    name,
    together(
      desk,
      {
        parts: [
          part("feed lead", "TRS lead"),
          part("amplifier", "headphone amplifier", { outputs: names.length }),
        ],
        plugged: [
          plug("feed lead", "near", "mixer", "phones"),
          plug("feed lead", "far", "amplifier", "in"),
        ],
      },
      sets({ call: byName, seats: names.length }, "headphones", "6.35 mm", (seat) => [
        "amplifier",
        outputName(seat - 1),
      ]),
    ),
    names.map((one, index) => `${index + 1} ${one}`),
  );

/** The same from the main pair, by an insert lead the other way round. */
export function fromMainPair(name: string, names: readonly string[]): Rig {
  const rig = fromHeadphoneSocket(name, names);
  return {
    ...rig,
    parts: rig.parts.map((one) => (one.id === "feed lead" ? { ...one, kind: "insert Y" } : one)),
    plugged: [
      ...rig.plugged.filter((end) => end.part !== "feed lead"),
      plug("feed lead", "left", "mixer", "main left"),
      plug("feed lead", "right", "mixer", "main right"),
      plug("feed lead", "stem", "amplifier", "in"),
    ],
  };
}

/** One set of headphones straight into a laptop. */
export const straightIn: Rig = seated(
  "Straight into the laptop",
  together(
    { parts: [part("laptop", "laptop")], plugged: [] },
    sets({ call: byName, seats: 1 }, "headphones", "3.5 mm", () => ["laptop", "phones"]),
  ),
  ["1 you"],
);

/** The evening of our own making that is shown, and simulated. */
export const example = fromHeadphoneSocket("Tallow Hall story evening", seats);

/** What the first screen offers. A village hall's story evening, made up for this program. */
export const builtInRigs: readonly Rig[] = [
  example,
  fromMainPair("Tallow Hall, from the main pair", seats),
  straightIn,
];

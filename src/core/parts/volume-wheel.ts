import type { Circuit } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import { kindOf } from "./kind.ts";
import { leadOf } from "./lead.ts";
import { odds } from "./lead-faults.ts";
import { jackSize } from "./leads.ts";
import type { Edit, Fault } from "./part.ts";
import { point } from "./part.ts";
import { runParameters } from "./wire.ts";

/** What a track leaves at its end. Value from memory. */
const rest: Ohms = 0.5;

const sides = [
  ["left", "tip"],
  ["right", "ring"],
] as const;

/** What lies above and below a wiper that stands so far up, from zero to one. */
const split = (ohms: Ohms, up: number) => ({
  above: Math.max(rest, ohms * (1 - up)),
  below: Math.max(rest, ohms * up),
});

const tracks = (ohms: Ohms, up: number): Circuit => {
  const { above, below } = split(ohms, up);
  return sides.flatMap(([side, contact]) => [
    resistor(`${side} above`, point("track", contact), point("wiper", contact), above),
    resistor(`${side} below`, point("wiper", contact), point("socket", "sleeve"), below),
  ]);
};

const stands = (side: string, ohms: Ohms, up: number): readonly Edit[] => {
  const { above, below } = split(ohms, up);
  return [
    { edit: "ohms", element: `${side} above`, ohms: above },
    { edit: "ohms", element: `${side} below`, ohms: below },
  ];
};

/** Odds: common practice, no source. */
const turned = (name: Fault["name"], edits: readonly Edit[], weight: number): Fault => ({
  name,
  at: "body",
  edits,
  weight,
  slot: "wheel",
  seen: true,
  repair: 5,
});

/**
 * Low on the wheel its two sections part: one at three tenths of the track, the other at half of it, some 3 dB in 32 Ω. Ganged tracks are
 * uneven at the bottom (handbook, section 5); how much, common practice, no source.
 */
const [low, higher] = [0.3, 0.5];

const faults = (ohms: Ohms, up: number): readonly Fault[] => [
  ...(up > 0
    ? [turned("volume down", [...stands("left", ohms, 0), ...stands("right", ohms, 0)], 60)]
    : []),
  turned(
    "wheel uneven, left weaker",
    [...stands("left", ohms, low), ...stands("right", ohms, higher)],
    10,
  ),
  turned(
    "wheel uneven, right weaker",
    [...stands("left", ohms, higher), ...stands("right", ohms, low)],
    10,
  ),
];

/**
 * A volume wheel in a lead: a track of `ohms` a side (1 kΩ: value from memory), `up` from zero to one. Two wires a side, halfway along the
 * lead.
 */
export const volumeWheel = kindOf(
  "adapter",
  {
    ...runParameters,
    metres: { ...runParameters.metres, typical: 1 },
    ohms: { unit: "Ω", typical: 1000, least: 50, most: 100_000 },
    up: { unit: "times", typical: 1, least: 0, most: 1 },
    size: jackSize,
  },
  ({ ohms, up, size, ...run }) =>
    leadOf(
      {
        ends: [
          { name: "plug", kind: "TRS", size },
          { name: "socket", kind: "TRS", size, socket: "TRS" },
        ],
        wires: [
          ...sides.flatMap(([, contact]) => [
            [contact, point("plug", contact), point("track", contact), 0.5] as const,
            [`${contact} out`, point("wiper", contact), point("socket", contact), 0.5] as const,
          ]),
          ["sleeve", point("plug", "sleeve"), point("socket", "sleeve")],
        ],
        cores: [[point("socket", "tip"), point("socket", "ring")]],
        inside: tracks(ohms, up),
        weak: [
          { at: "plug", end: "plug", odds: odds.moulded },
          { at: "socket", end: "socket", odds: odds.moulded },
        ],
        more: faults(ohms, up),
      },
      run,
    ),
);

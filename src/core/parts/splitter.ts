import type { Ohms } from "#core/units/units.ts";
import { resistor } from "./boxes.ts";
import { kindOf } from "./kind.ts";
import { type LeadEnd, type LeadWire, leadOf } from "./lead.ts";
import { odds } from "./lead-faults.ts";
import { jackSize } from "./leads.ts";
import { point } from "./part.ts";
import { runParameters } from "./wire.ts";

/** What one socket of a splitter is called. */
const splitterOutput = (index: number): string => `output ${index + 1}`;

/** From the plug's own wires to one socket: its springs, behind a resistor each where there is one. */
const branch = (name: string, resisted: boolean): readonly LeadWire[] =>
  (["tip", "ring", "sleeve"] as const).map((contact) => [
    `${name} ${contact}`,
    point("bus", contact),
    resisted && contact !== "sleeve" ? point(`${name} inside`, contact) : point(name, contact),
    0,
  ]);

const resistors = (name: string, ohms: Ohms) =>
  (["tip", "ring"] as const).map((contact) =>
    resistor(
      `${name} ${contact} resistor`,
      point(`${name} inside`, contact),
      point(name, contact),
      ohms,
    ),
  );

/**
 * One stereo plug to several sockets by wires alone, so that every set loads its neighbours (handbook, section 5). `seriesOhms` is a resistor
 * in each side of each socket, which keeps a short in one from taking the others down; none at zero.
 */
export const splitter = kindOf(
  "splitter",
  {
    ...runParameters,
    metres: { ...runParameters.metres, typical: 0.2 },
    sets: { unit: "sets", typical: 2, least: 2, most: 8 },
    seriesOhms: { unit: "Ω", typical: 0, least: 0, most: 1000 },
    size: jackSize,
  },
  ({ sets, seriesOhms, size, ...run }) => {
    const names = Array.from({ length: sets }, (_, index) => splitterOutput(index));
    const resisted = seriesOhms > 0;
    return leadOf(
      {
        ends: [
          { name: "plug", kind: "TRS", size },
          ...names.map((name): LeadEnd => ({ name, kind: "TRS", size, socket: "TRS" })),
        ],
        wires: [
          ...(["tip", "ring", "sleeve"] as const).map(
            (contact): LeadWire => [contact, point("plug", contact), point("bus", contact)],
          ),
          ...names.flatMap((name) => branch(name, resisted)),
        ],
        cores: [[point("bus", "tip"), point("bus", "ring")]],
        inside: resisted ? names.flatMap((name) => resistors(name, seriesOhms)) : [],
        weak: [
          { at: "plug", end: "plug", odds: odds.lead },
          ...names.map((name) => ({ at: name, end: name, odds: odds.worn })),
        ],
      },
      run,
    );
  },
);

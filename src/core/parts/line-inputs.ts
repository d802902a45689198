import { type Circuit, earth } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { chassis, powered, resistor } from "./boxes.ts";
import { inletOf, inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { wornReturn } from "./socket-faults.ts";

/**
 * Whether the inputs share the ground of the box that drives the lead, as those of an interface looped to itself do, or have one of their
 * own, as a recorder on its battery has. Joined grounds are drawn as two boxes with a mains earth each.
 */
export const grounds = ["joined", "apart"] as const;
export type Grounds = (typeof grounds)[number];

/** Copper on one board (common practice, no source). */
const board: Ohms = 0.01;

/** What ties the inputs to the ground of the box that drives the lead. */
export const groundsOf = (by: Grounds): Circuit =>
  by === "joined" ? [resistor("joined grounds", chassis, earth, board)] : powered("battery");

/** Inputs of a recorder or an interface: two sides, or one of two that carries one signal. */
const kinds = [
  "stereo jack",
  "left and right jacks",
  "balanced left and right jacks",
  "XLR pair",
  "RCA pair",
] as const;

/** A good lead is measured first in the same place, by which the inputs and the sources fall out: what is left of both. Common practice, no source. */
const tolerance = 0.01;

/** Two line inputs that record what a lead brings. Nothing is normalled: each records its own side. */
export const lineInputs = kindOf(
  "measuring",
  {
    input: { choices: kinds, typical: "balanced left and right jacks" },
    "input ohms": inputOhms,
    grounds: { choices: grounds, typical: "joined" },
  },
  ({ input, "input ohms": ohms, grounds: by }) => {
    const { sockets, takes } = inletOf(input, ohms);
    return {
      plugs: [],
      sockets,
      body: groundsOf(by),
      takes,
      controls: {},
      measures: { tolerance },
      faults: sockets.map(({ name, kind }) =>
        wornReturn(name, kind === "XLR" ? "pin 1" : "sleeve"),
      ),
      look: 15,
    };
  },
);

import { type Circuit, earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import type { FlexReturn } from "#core/measurement/flex-names.ts";
import { resistor } from "#core/parts/boxes.ts";
import { trsLead } from "#core/parts/leads.ts";
import type { Edit } from "#core/parts/part.ts";
import { flexFrequencies } from "#core/signals/flex-tones.ts";
import { add, type Complex, scale, subtract } from "#core/units/complex.ts";
import type { Ohms } from "#core/units/units.ts";

export const frequencies = [...flexFrequencies.left, ...flexFrequencies.right];

/** For each channel the gains of the four tones, left's two first. */
export type Gains = readonly (readonly Complex[])[];

const lead = trsLead.make();

/** The edits of a fault of the catalogue's lead. */
export function leadFault(name: string): readonly Edit[] {
  const fault = lead.faults.find((one) => one.name === name);
  if (fault === undefined) throw new Error(`a lead has no fault ${name}`);
  return fault.edits;
}

/** A contact with more ohms. */
export const contactOhms = (element: "tip" | "ring" | "sleeve", ohms: Ohms): readonly Edit[] => [
  { edit: "ohms", element, ohms },
];

const output = (contact: "tip" | "ring", ohms: Ohms) => ({
  kind: "source" as const,
  name: contact,
  a: `near.${contact}`,
  b: earth,
  ohms,
  drive: { [contact]: 1 },
});

/** An interface looped to itself: 75 ohm outputs, 10 kilohm inputs, one ground. */
const joined: Circuit = [
  output("tip", 75),
  output("ring", 75),
  resistor("near bush", "near.sleeve", earth, 0.02),
  resistor("far bush", "far.sleeve", earth, 0.02),
  resistor("left input", "far.tip", earth, 10_000),
  resistor("right input", "far.ring", earth, 10_000),
];

/** The handbook's load box on a headphone output of 10 ohms (section 7). */
const loadBox: Circuit = [
  output("tip", 10),
  output("ring", 10),
  resistor("near bush", "near.sleeve", earth, 0.02),
  resistor("left load", "far.tip", "far.sleeve", 33),
  resistor("right load", "far.ring", "far.sleeve", 33),
];

function body(edits: readonly Edit[]): Circuit {
  const bridges = edits.flatMap((edit, at) =>
    edit.edit === "bridge" ? [resistor(`bridge ${at}`, edit.a, edit.b, edit.ohms)] : [],
  );
  const elements = lead.body.map((element) => {
    const edit = edits.find((one) => one.edit === "ohms" && one.element === element.name);
    return edit?.edit === "ohms" && element.kind !== "capacitor"
      ? { ...element, ohms: edit.ohms }
      : element;
  });
  return [...elements, ...bridges];
}

/** What a lead does to the four tones, by the project's own solver. */
export function gainsOf(returns: FlexReturn, edits: readonly Edit[] = []): Gains {
  const circuit = [...(returns === "joined" ? joined : loadBox), ...body(edits)];
  const minus = returns === "joined" ? earth : "far.sleeve";
  return ["far.tip", "far.ring"].map((plus) =>
    frequencies.map((frequency, at) => {
      const [volts] = solve(circuit, frequency, [at < 2 ? "tip" : "ring"]);
      if (volts === undefined) throw new Error("no answer");
      return subtract(volts(plus), volts(minus));
    }),
  );
}

/** Part of the way from one to the other. */
export const between = (one: Gains, other: Gains, share: number): Gains =>
  one.map((row, channel) =>
    row.map((gain, tone) =>
      add(scale(gain, 1 - share), scale(other[channel]?.[tone] ?? gain, share)),
    ),
  );

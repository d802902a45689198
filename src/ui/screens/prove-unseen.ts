import type { Unseen } from "#core/proving/unseen.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { pinOf } from "#ui/parts/pin-places.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import { leadFaultWords } from "./prove-mend.ts";
import { contactWords } from "./prove-names.ts";

const dirt = /of (\d+) ohms$/;
/** What breaks a wire. */
const isOpen = ({ edits }: RigFault): boolean =>
  edits.every((edit) => edit.edit === "ohms" && edit.ohms >= 1e6);

/** What a way of proving cannot see of a lead, by name: 'sleeve', 'capacitance'. */
export function unseenNames(spelled: Spelled, { faults, wires, capacitance }: Unseen) {
  const steady = faults.filter(({ comesAndGoes }) => !comesAndGoes);
  const lines = [
    ...wires.map(([from, to]) => wireWords(spelled, from, to)),
    ...dirtLine(steady),
    ...steady
      .filter((fault) => !dirt.test(fault.name) && !(isOpen(fault) && wires.length > 0))
      .map((fault) => `whether ${leadFaultWords(spelled, fault)}`),
    ...(capacitance ? ["capacitance"] : []),
  ];
  return [...new Set(lines)];
}

/** A wire by its contact, where that is the same at both ends. */
function wireWords(spelled: Spelled, from: string, to: string): string {
  const [one, other] = [pinOf(from), pinOf(to)];
  return one.contact === other.contact && spelled.west.length + spelled.east.length === 2
    ? one.contact
    : `${contactWords(spelled, from)} to ${contactWords(spelled, to)}`;
}

/** Dirt up to the most that is not seen. */
function dirtLine(faults: readonly RigFault[]): readonly string[] {
  const ohms = faults.flatMap(({ name }) => Number(dirt.exec(name)?.[1] ?? 0)).filter(Boolean);
  return ohms.length === 0 ? [] : [`dirt of ${Math.max(...ohms)} Ω or less`];
}

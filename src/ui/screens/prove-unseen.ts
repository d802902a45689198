import type { Unseen } from "#core/proving/unseen.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { pinOf } from "#ui/parts/pin-places.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import type { Words } from "#ui/words/use-words.ts";
import { leadFaultWords } from "./prove-mend.ts";
import { contactWords } from "./prove-names.ts";

const dirt = /of (\d+) ohms$/;
/** What breaks a wire. */
const isOpen = ({ edits }: RigFault): boolean =>
  edits.every((edit) => edit.edit === "ohms" && edit.ohms >= 1e6);

/** What a way of proving cannot see of a lead, by name: 'sleeve', 'capacitance'. */
export function unseenNames(
  words: Words,
  spelled: Spelled,
  { faults, wires, capacitance }: Unseen,
): readonly string[] {
  const { unseen } = words.prove;
  const steady = faults.filter(({ comesAndGoes }) => !comesAndGoes);
  const lines = [
    ...wires.map(([from, to]) => wireWords(words, spelled, from, to)),
    ...dirtLine(words, steady),
    ...steady
      .filter((fault) => !dirt.test(fault.name) && !(isOpen(fault) && wires.length > 0))
      .map((fault) => unseen.whether(leadFaultWords(words, spelled, fault))),
    ...(capacitance ? [unseen.capacitance] : []),
  ];
  return [...new Set(lines)];
}

/** A wire by its contact, where that is the same at both ends. */
function wireWords(words: Words, spelled: Spelled, from: string, to: string): string {
  const [one, other] = [pinOf(from), pinOf(to)];
  return one.contact === other.contact && spelled.west.length + spelled.east.length === 2
    ? words.marks.contact(one.contact)
    : words.prove.unseen.wire(contactWords(words, spelled, from), contactWords(words, spelled, to));
}

/** Dirt up to the most that is not seen. */
function dirtLine({ prove }: Words, faults: readonly RigFault[]): readonly string[] {
  const ohms = faults.flatMap(({ name }) => Number(dirt.exec(name)?.[1] ?? 0)).filter(Boolean);
  return ohms.length === 0 ? [] : [prove.unseen.dirt(Math.max(...ohms))];
}

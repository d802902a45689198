import { contactOf } from "#core/proving/ends.ts";
import type { Unseen } from "#core/proving/unseen.ts";
import type { Wire } from "#core/proving/wiring.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { Ohms } from "#core/units/units.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";

const words = english.proving;

/** A contact of the lead that is proved, written `plug.contact`, in words. */
export function contactWords(rig: BuiltRig, written: string): string {
  const { at, contact, plug } = contactOf(rig, written);
  return words.contact(english.patching.contact(contact, plug), words.end(at));
}

/** A resistance as a meter's reader says it. */
function ohmsWords(ohms: Ohms): string {
  if (ohms >= 1000) return `${(ohms / 1000).toPrecision(2)} kΩ`;
  return `${ohms < 10 ? ohms.toFixed(1) : ohms.toFixed(0)} Ω`;
}

const endsOf = (rig: BuiltRig, { from, to, ohms, instead }: Wire) => ({
  from: contactWords(rig, from),
  to: contactWords(rig, to),
  ohms: ohms === undefined ? "" : ohmsWords(ohms),
  instead: instead === undefined ? "" : contactWords(rig, instead),
});

/** How one wire is, against how it was meant, as a sentence without its full stop. */
export const wireWords = (rig: BuiltRig, wire: Wire): string =>
  words.wires[wire.state](endsOf(rig, wire));

/** What to solder, contact by contact; nothing where every wire is as it was meant. */
export const solderWords = (rig: BuiltRig, wires: readonly Wire[]): readonly string[] =>
  wires.flatMap((wire) =>
    wire.state === "as intended" ? [] : [words.solder[wire.state](endsOf(rig, wire))],
  );

/** What was not tested by a way of proving: wires by both of their contacts, other faults by name, and the cable's capacitance. */
export function unseenWords(
  rig: BuiltRig,
  { faults, wires, capacitance }: Unseen,
): readonly string[] {
  const steady = faults.filter(({ comesAndGoes }) => !comesAndGoes);
  return [
    ...wires.map(([from, to]) =>
      words.notTested(`${contactWords(rig, from)} to ${contactWords(rig, to)}`),
    ),
    ...steady.map((fault) => words.notTested(faultText(english, rig, fault))),
    ...(capacitance ? [words.notTested(words.capacitance)] : []),
  ];
}

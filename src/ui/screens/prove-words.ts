import type { Method } from "#core/proving/choice.ts";
import type { LeadEnd } from "#core/proving/ends.ts";

interface Words {
  readonly name: string;
  readonly note: string;
}

/** What is at an end of a lead, as somebody says it who has it in the hand. */
export const endWords: Readonly<Record<LeadEnd, Words>> = {
  TRS: { name: "stereo jack", note: "three contacts: two black bands (TRS)" },
  TS: { name: "mono jack", note: "two contacts: one black band (TS)" },
  XLR: { name: "XLR", note: "three pins, or three holes" },
  "two TS": { name: "two mono jacks", note: "left and right (TS)" },
  "two TRS": { name: "two jacks of three contacts", note: "left and right (TRS)" },
  "two RCA": { name: "two RCA", note: "red is right" },
  "two XLR": { name: "two XLR", note: "left and right" },
  "TRS socket": { name: "jack socket in the lead", note: "a plug goes into it" },
};

/** The ways of proving a lead, and what each wants. */
export const methodWords: Readonly<Record<Method, Words>> = {
  return: {
    name: "back into the sound card",
    note: "From its outputs through the lead into its line inputs. Half a minute.",
  },
  "load box": {
    name: "through a load box",
    note: "From its outputs into two resistors, and from across these into its line inputs. Half a minute.",
  },
  ear: {
    name: "by ear",
    note: "Between gear and headphones that are known to be good. Three or four sounds.",
  },
  meter: {
    name: "with a multimeter",
    note: "Contact to contact, unplugged at both ends. A reading at a time.",
  },
};

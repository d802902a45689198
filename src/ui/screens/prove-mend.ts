import type { Wire } from "#core/proving/wiring.ts";
import { sentence } from "#core/report/phrases.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import type { Words } from "#ui/words/use-words.ts";
import { contactName, contactWords, endWord, ohmsWords } from "./prove-names.ts";

/** The plug or socket of a lead that a fault sits in, by letter and mark; nothing where it is the lead itself. */
function plugWords(
  words: Words,
  spelled: Spelled,
  { at }: Pick<RigFault, "at">,
): string | undefined {
  const end = [...spelled.west, ...spelled.east].find(({ name }) => name === at);
  const { plug, socket } = words.proveBench.place;
  return end && (end.isSocket ? socket : plug)(endWord(words, spelled, at));
}

const placeWords = (words: Words, spelled: Spelled, fault: RigFault): string =>
  plugWords(words, spelled, fault) ?? words.proveBench.place.lead;

/** What was found is like no fault of a lead of this kind. */
export const isUnlisted = (faults: readonly Pick<RigFault, "name">[]): boolean =>
  faults.some(({ name }) => name === "something not on the list");

/** A fault of a lead as a sentence without its full stop. */
export function leadFaultWords(words: Words, spelled: Spelled, fault: RigFault): string {
  if (isUnlisted([fault])) return words.proveBench.noFault;
  const { faults, nowAndThen } = words.language;
  const is = faults[fault.name].is(placeWords(words, spelled, fault));
  return fault.comesAndGoes ? `${is}${nowAndThen}` : is;
}

/** Faults that want no solder: their own words say what to do. */
const asSaid: readonly RigFault["name"][] = [
  "legs exchanged",
  "lead with two contacts",
  "adapter loose",
];

/** Whether a soldering iron mends it. */
export const isSoldered = (faults: readonly RigFault[]): boolean =>
  !isUnlisted(faults) && !faults.some(({ name }) => asSaid.includes(name));

/** What to do about a lead's wires, a line for each thing; nothing to solder is a line, too. */
export function mendLines(
  words: Words,
  spelled: Spelled,
  wires: readonly Wire[],
  faults: readonly RigFault[],
): readonly string[] {
  if (isUnlisted(faults)) return [words.proveBench.mend.unlisted];
  const plain = faults.find(({ name }) => asSaid.includes(name));
  if (plain !== undefined) {
    const { mend } = words.language.faults[plain.name];
    return [sentence(mend(placeWords(words, spelled, plain)))];
  }
  const where = new Set(faults.map((fault) => plugWords(words, spelled, fault)));
  const [at] = where.size === 1 ? where : [];
  return [
    ...exchangedLine(words, spelled, wires, at),
    ...wires.flatMap((wire) => lineOf(words, spelled, wire, at)),
  ];
}

/** All that changed places, as one job. */
function exchangedLine(
  words: Words,
  spelled: Spelled,
  wires: readonly Wire[],
  at: string | undefined,
): readonly string[] {
  const named = (node: string) => contactWords(words, spelled, node);
  const moved = wires
    .filter(({ state }) => state === "exchanged")
    .map(({ from, to, instead = from }) => ({
      to: named(to),
      on: named(instead),
      from: named(from),
    }));
  return moved.length === 0 ? [] : [words.proveBench.mend.exchanged(moved, at)];
}

function lineOf(
  words: Words,
  spelled: Spelled,
  { from, to, state, ohms = 0 }: Wire,
  at: string | undefined,
): readonly string[] {
  const [one, other] = [contactWords(words, spelled, from), contactWords(words, spelled, to)];
  const joint = contactName(words, spelled, to);
  const { mend } = words.proveBench;
  switch (state) {
    case "open":
      return [mend.open(one, other, joint, at)];
    case "comes and goes":
      return [mend.comesAndGoes(one, other)];
    case "resistive":
      return [mend.resistive(one, other, ohmsWords(words, ohms), joint, at)];
    case "joined":
      return [mend.joined(one, other, at)];
    default:
      return [];
  }
}

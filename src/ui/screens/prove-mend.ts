import type { Wire } from "#core/proving/wiring.ts";
import { capital } from "#core/report/phrases.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import { contactName, contactWords, endWord, ohmsWords, withThe } from "./prove-names.ts";

/** Where on a lead a fault sits: the lead, or one of its plugs by letter and mark. */
function placeWords(spelled: Spelled, { at }: Pick<RigFault, "at">): string {
  const end = [...spelled.west, ...spelled.east].find(({ name }) => name === at);
  if (end === undefined) return "the lead";
  return `the ${end.isSocket ? "socket" : "plug"} at ${endWord(spelled, at)}`;
}

/** What was found is like no fault of a lead of this kind. */
export const isUnlisted = (faults: readonly Pick<RigFault, "name">[]): boolean =>
  faults.some(({ name }) => name === "something not on the list");

/** A fault of a lead as a sentence without its full stop. */
export const leadFaultWords = (spelled: Spelled, fault: RigFault): string =>
  isUnlisted([fault])
    ? "no fault of this lead goes with what was found"
    : english.faults[fault.name].is(placeWords(spelled, fault)) +
      (fault.comesAndGoes ? english.nowAndThen : "");

/** Faults that want no solder: their own words say what to do. */
const asSaid: readonly RigFault["name"][] = [
  "legs exchanged",
  "lead with two contacts",
  "adapter loose",
];

/** Whether a soldering iron mends it. */
export const isSoldered = (faults: readonly RigFault[]): boolean =>
  !isUnlisted(faults) && !faults.some(({ name }) => asSaid.includes(name));

const unlistedLine =
  "See that both its ends are plugged as they should be and that it is a lead of this kind, and check again. Contact by contact a multimeter shows what it is.";

/** What to do about a lead's wires, a line for each thing; nothing to solder is a line, too. */
export function mendLines(
  spelled: Spelled,
  wires: readonly Wire[],
  faults: readonly RigFault[],
): readonly string[] {
  if (isUnlisted(faults)) return [unlistedLine];
  const plain = faults.find(({ name }) => asSaid.includes(name));
  if (plain !== undefined)
    return [capital(`${english.faults[plain.name].mend(placeWords(spelled, plain))}.`)];
  const where = new Set(faults.map((fault) => placeWords(spelled, fault)));
  const [only] = where.size === 1 ? where : [];
  const at = only === undefined || only === "the lead" ? undefined : only;
  return [
    ...exchangedLine(spelled, wires, at),
    ...wires.flatMap((wire) => lineOf(spelled, wire, at)),
  ];
}

/** All that changed places, as one job. */
function exchangedLine(
  spelled: Spelled,
  wires: readonly Wire[],
  at: string | undefined,
): readonly string[] {
  const moved = wires.filter(({ state }) => state === "exchanged");
  if (moved.length === 0) return [];
  const list = moved.map(
    ({ from, to, instead = from }) =>
      `${contactWords(spelled, to)} hangs on ${contactWords(spelled, instead)} and belongs on ${contactWords(spelled, from)}`,
  );
  const place = at ?? "the end that is not soldered as drawn; open both and look";
  return [`Resolder at ${place}: ${list.join("; ")}.`];
}

function lineOf(
  spelled: Spelled,
  { from, to, state, ohms = 0 }: Wire,
  at: string | undefined,
): readonly string[] {
  const both = `${contactWords(spelled, from)} and ${contactWords(spelled, to)}`;
  const joint = withThe(contactName(spelled, to));
  const place = at ?? "the plug whose cord is bent most, then the other";
  switch (state) {
    case "open":
      return [
        `${capital(both)} are not joined. Open ${place}: resolder ${joint}, or cut the cord back a hand's width where it is broken inside.`,
      ];
    case "comes and goes":
      return [
        `${capital(both)} come and go. Bend a hand's width at a time to find where; mostly at the strain relief: cut the cord back and solder it anew.`,
      ];
    case "resistive":
      return [
        `${capital(both)} are joined through ${ohmsWords(ohms)}. Clean both contacts and read again; if it stays, resolder ${joint} at ${at ?? "both ends"}.`,
      ];
    case "joined":
      return [
        `${capital(both)} touch and should not. Open ${at ?? "both plugs"}: look for a strand of the screen, a bridge of solder, or molten plastic.`,
      ];
    default:
      return [];
  }
}

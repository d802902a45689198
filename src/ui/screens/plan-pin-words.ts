import { english } from "#core/words/english.ts";
import type { PinEnd, Spelled } from "#ui/parts/pins.ts";

const words = english.patching;

/** A lead in words, an end of the source's side to a line: 'mono plug (TS), marked left: tip to tip; sleeve to sleeve'. */
export function pinWords({ west, east, wires }: Spelled): readonly string[] {
  return west.map((end) => {
    const contacts = end.contacts.map((contact) => {
      const to = wires
        .filter(({ from }) => from.end === end.name && from.contact === contact)
        .map((wire) => farWords(east, wire.to.end, wire.to.contact));
      const name = words.contact(contact, end.kind);
      return to.length === 0 ? `${name} left alone` : `${name} to ${to.join(" and ")}`;
    });
    return `${endWords(end, west)}: ${contacts.join("; ")}.`;
  });
}

function farWords(
  east: readonly PinEnd[],
  name: string,
  contact: PinEnd["contacts"][number],
): string {
  const end = east.find((one) => one.name === name);
  const what = words.contact(contact, end?.kind ?? "TRS");
  return east.length > 1 ? `the ${mark(name)} ${what}` : what;
}

/** What stands on a plug: the side, whichever end it is at. */
const mark = (name: string): string => name.replace(/^(near|far) /, "");

/** An end by its kind and size, and its mark where there are several. */
function endWords({ kind, size, isSocket, name }: PinEnd, beside: readonly PinEnd[]): string {
  const what = isSocket ? `socket for a ${words.plugs[kind]}` : words.plugs[kind];
  const small = size === "3.5 mm" ? ", 3.5 mm" : "";
  return `${what}${small}${beside.length > 1 ? `, ${mark(name)}` : ""}`;
}

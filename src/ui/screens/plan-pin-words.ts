import type { PinEnd, Spelled } from "#ui/parts/pins.ts";
import type { Words } from "#ui/words/use-words.ts";

/** A lead in words, an end of the source's side to a line: 'mono plug (TS), marked left: tip to tip; sleeve to sleeve'. */
export function pinWords(words: Words, { west, east, wires }: Spelled): readonly string[] {
  const { alone, to } = words.plan.pins;
  return west.map((end) => {
    const contacts = end.contacts.map((contact) => {
      const others = wires
        .filter(({ from }) => from.end === end.name && from.contact === contact)
        .map((wire) => farWords(words, east, wire.to.end, wire.to.contact));
      const name = words.language.patching.contact(contact, end.kind);
      return others.length === 0 ? alone(name) : to(name, others);
    });
    return `${endWords(words, end, west)}: ${contacts.join("; ")}.`;
  });
}

function farWords(
  { language, marks, plan }: Words,
  east: readonly PinEnd[],
  name: string,
  contact: PinEnd["contacts"][number],
): string {
  const end = east.find((one) => one.name === name);
  const what = language.patching.contact(contact, end?.kind ?? "TRS");
  return east.length > 1 ? plan.pins.at(marks.plug(mark(name)), what) : what;
}

/** What stands on a plug: the side, whichever end it is at. */
const mark = (name: string): string => name.replace(/^(near|far) /, "");

/** An end by its kind and size, and its mark where there are several. */
function endWords(
  { figures, language, marks, plan }: Words,
  { kind, size, isSocket, name }: PinEnd,
  beside: readonly PinEnd[],
): string {
  const plug = language.patching.plugs[kind];
  const what = isSocket ? plan.pins.socketFor(plug) : plug;
  const small = size === "3.5 mm" ? `, ${figures.fixed(3.5, 1)} mm` : "";
  return `${what}${small}${beside.length > 1 ? `, ${marks.plug(mark(name))}` : ""}`;
}

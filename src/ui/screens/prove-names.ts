import type { Ohms } from "#core/units/units.ts";
import { pinOf } from "#ui/parts/pin-places.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import type { Words } from "#ui/words/use-words.ts";

/** A contact as it is called on its plug, pins by their numbers: 'tip', 'shell', 'pin 2'. */
export function contactName(
  { language, marks }: Words,
  { west, east }: Spelled,
  node: string,
): string {
  const { end: name, contact } = pinOf(node);
  const kind = [...west, ...east].find((end) => end.name === name)?.kind ?? "TRS";
  return kind === "XLR" ? marks.contact(contact) : language.patching.contact(contact, kind);
}

/** A contact by its end's letter: 'tip of A', or of several plugs 'tip of A, left'. */
export const contactWords = (words: Words, spelled: Spelled, node: string): string =>
  words.prove.contactAt(
    contactName(words, spelled, node),
    endWord(words, spelled, pinOf(node).end),
  );

/** A plug or a socket by its end's letter, and its mark where there are several at that end. */
export function endOf({ west, east }: Spelled, name: string) {
  const first = west.some((end) => end.name === name);
  const letter = first ? "A" : "B";
  const several = (first ? west : east).length > 1;
  return { letter, mark: several ? name.replace(/^(near|far) /, "") : undefined };
}

/** The same as it is said: 'A', or of several 'A, left'. */
export function endWord({ marks, prove }: Words, spelled: Spelled, name: string): string {
  const { letter, mark } = endOf(spelled, name);
  return prove.end(letter, mark && marks.plug(mark));
}

/** Two figures of a resistance, with a thousand as k. */
export function ohmsWords({ figures }: Words, ohms: Ohms): string {
  const [number, unit] = ohms >= 1000 ? [ohms / 1000, "kΩ"] : [ohms, "Ω"];
  return `${figures.plain(Number(number.toPrecision(2)))} ${unit}`;
}

/** Below this a meter is said to show near nothing. */
const nearNothing: Ohms = 1;

/** What a meter showed, as it was pointed at. */
export function shownWords(
  words: Words,
  ohms: Ohms | undefined,
  bent: "steady" | "changes" | undefined,
): string {
  const { shownBeep, shownOpen, comesAndGoes } = words.prove.meter;
  const figure = ohms === undefined ? shownOpen : ohmsWords(words, ohms);
  const shown = ohms !== undefined && ohms < nearNothing ? shownBeep : figure;
  return bent === "changes" ? comesAndGoes(shown) : shown;
}

/** Ohms as somebody writes them, '1.2k' and '0,4' too; nothing where it is no number of them. */
export function readOhms(text: string): Ohms | undefined {
  const found = /^\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*([kKmM]?)\s*(?:Ω|ohms?)?\s*$/i.exec(text);
  if (found === null) return undefined;
  const [, number = "", unit = ""] = found;
  const ohms = Number(number.replace(",", ".")) * (times[unit.toLowerCase()] ?? 1);
  return Number.isFinite(ohms) ? ohms : undefined;
}

const times: Readonly<Record<string, number>> = { k: 1e3, m: 1e6 };

import type { Ohms } from "#core/units/units.ts";
import { english } from "#core/words/english.ts";
import { pinOf } from "#ui/parts/pin-places.ts";
import type { Spelled } from "#ui/parts/pins.ts";

/** A contact as it is called on its plug, pins by their numbers: 'tip', 'shell', 'pin 2'. */
export function contactName({ west, east }: Spelled, node: string): string {
  const { end: name, contact } = pinOf(node);
  const kind = [...west, ...east].find((end) => end.name === name)?.kind ?? "TRS";
  return kind === "XLR" ? contact : english.patching.contact(contact, kind);
}

/** A contact by its end's letter: 'tip of A', or of several plugs 'tip of A, left'. */
export const contactWords = (spelled: Spelled, node: string): string =>
  `${contactName(spelled, node)} of ${endWord(spelled, pinOf(node).end)}`;

/** The same inside a sentence: 'the tip of A', but 'pin 2 of A'. */
export const theContact = (spelled: Spelled, node: string): string =>
  withThe(contactWords(spelled, node));

/** Pins bear numbers, so that they want no article. */
export const withThe = (contact: string): string =>
  contact.startsWith("pin ") ? contact : `the ${contact}`;

/** A plug or a socket by its end's letter: 'A', or of several 'A, left'. */
export function endWord({ west, east }: Spelled, name: string): string {
  const first = west.some((end) => end.name === name);
  const mark = (first ? west : east).length > 1 ? `, ${name.replace(/^(near|far) /, "")}` : "";
  return `${first ? "A" : "B"}${mark}`;
}

/** Two figures of a resistance, with a thousand as k. */
export function ohmsWords(ohms: Ohms): string {
  const [number, unit] = ohms >= 1000 ? [ohms / 1000, " kΩ"] : [ohms, " Ω"];
  return `${Number(number.toPrecision(2))}${unit}`;
}

/** Below this a meter is said to show near nothing. */
const nearNothing: Ohms = 1;

/** What a meter showed, as it was pointed at. */
export function shownWords(ohms: Ohms | undefined, bent: "steady" | "changes" | undefined): string {
  const comes = bent === "changes" ? ", and it comes and goes" : "";
  if (ohms === undefined) return `no beep, open${comes}`;
  return `${ohms < nearNothing ? "beep, near 0 Ω" : ohmsWords(ohms)}${comes}`;
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

import type { Words } from "#ui/words/use-words.ts";

/** What the catalogue calls ends and contacts; what stands on a box is not translated, and numbers stay as they are. */
const words: Readonly<Record<string, string>> = {
  far: "hinten",
  left: "links",
  near: "vorn",
  output: "Ausgang",
  pin: "Pin",
  plug: "Stecker",
  right: "rechts",
  ring: "Ring",
  sleeve: "Schaft",
  socket: "Buchse",
  stem: "Stamm",
  tip: "Spitze",
};
const known = new RegExp(`\\b(${Object.keys(words).join("|")})\\b`, "g");
const said = (name: string): string => name.replace(known, (word) => words[word] ?? word);

export const marks: Words["marks"] = {
  socket: (name) => (/^(output \d+|socket)$/.test(name) ? said(name) : name),
  plug: said,
  contact: said,
  and: (names) => names.join(" und "),
};

import type { Words } from "#ui/words/use-words.ts";

/** Words on boxes and plugs, as the trade writes them here; numbers stay as they are. */
const words: Readonly<Record<string, string>> = {
  "behind above": "hinten oben",
  "behind below": "hinten unten",
  "pin 1": "Pin 1",
  "pin 2": "Pin 2",
  "pin 3": "Pin 3",
  "ring 2": "Ring 2",
  above: "oben",
  below: "unten",
  digital: "Digital",
  far: "fern",
  headphones: "Kopfhörer",
  in: "Eingang",
  left: "links",
  line: "Line",
  link: "Link",
  main: "Main",
  microphone: "Mikrofon",
  mix: "Mix",
  mono: "Mono",
  monitor: "Monitor",
  near: "nah",
  out: "Ausgang",
  output: "Ausgang",
  phones: "Phones",
  plug: "Stecker",
  right: "rechts",
  ring: "Ring",
  send: "Send",
  sleeve: "Schaft",
  socket: "Buchse",
  speaker: "Lautsprecher",
  stem: "Stamm",
  tip: "Spitze",
  wireless: "Funk",
};
const known = new RegExp(`\\b(${Object.keys(words).join("|")})\\b`, "g");
const said = (name: string): string => name.replace(known, (word) => words[word] ?? word);

export const marks: Words["marks"] = {
  socket: said,
  plug: said,
  contact: said,
  and: (names) => names.join(" und "),
};

/** Names that the program gave to the parts of its own rigs, long ones with where they may be broken; whatever somebody typed stays as it is. */
const given: Readonly<Record<string, string>> = {
  adapter: "Adapter",
  amplifier: "Kopfhörer\u00ADverstärker",
  "belt pack": "Taschen\u00ADempfänger",
  bay: "Steckfeld",
  box: "Stagebox",
  console: "Konsole",
  "feed lead": "Zuleitung",
  headphones: "Kopfhörer",
  headset: "Hörsprech\u00ADgarnitur",
  "in-ears": "In-Ears",
  "insert lead": "Y-Kabel",
  laptop: "Laptop",
  lead: "Kabel",
  "left lead": "linkes Kabel",
  "link sender": "Streckensender",
  mixer: "Mischpult",
  pack: "Taschen\u00ADempfänger",
  phone: "Telefon",
  "personal mixer": "Monitorpult",
  "right lead": "rechtes Kabel",
  player: "Player",
  source: "Quelle",
  "source lead": "Quellkabel",
  splitter: "Verteiler",
  transmitter: "Funksender",
};

/** A name as it is shown by itself: 'Kopfhörer 2'. */
export function shownName(id: string): string {
  const [, stem = id, number = ""] = id.match(/^(.*?)( \d+)$/) ?? [];
  return given[stem] === undefined ? id : `${given[stem]}${number}`;
}

/** Ours, which are no words that stand on a box. */
const ends: Readonly<Record<string, string>> = {
  near: "vorn",
  far: "hinten",
  left: "links",
  right: "rechts",
  "near left": "vorn links",
  "near right": "vorn rechts",
  "far left": "hinten links",
  "far right": "hinten rechts",
  plug: "Stecker",
  plugs: "Stecker",
  socket: "Buchse",
};

/** A plug of a part that has several. */
export const plugWords = (plug: string): string => `Stecker »${ends[plug] ?? plug}«`;

/** A socket or a spot on a part, in brackets: what stands on a box is not translated. */
export function spotWords(at: string): string {
  const [, output] = at.match(/^output (\d+)$/) ?? [];
  if (output !== undefined) return `(Ausgang ${output})`;
  return at === "plugs" || at === "socket" ? `(${ends[at]})` : `(Buchse »${at}«)`;
}

/** A part, or a socket of it, in quotation marks: no article, so no case. */
export function quoted(place: string): string {
  const [part = place, socket] = place.split(", ");
  const name = `»${shownName(part)}«`;
  return socket === undefined ? name : `${name} ${spotWords(socket)}`;
}

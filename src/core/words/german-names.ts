import { kinds } from "./german-parts.ts";

/** Names that the program gave to the parts of its own rigs, long ones with where they may be broken; whatever somebody typed stays as it is. */
const given: Readonly<Record<string, string>> = {
  adapter: "Adapter",
  amplifier: "Verstärker",
  "belt pack": "Taschen\u00ADempfänger",
  bay: "Steckfeld",
  box: "Stagebox",
  console: "Pult",
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
  "personal mixer": "Personal-Mixer",
  "right lead": "rechtes Kabel",
  player: "Player",
  source: "Quelle",
  "source lead": "Quellkabel",
  splitter: "Verteiler",
  transmitter: "Funksender",
};

/** What the program names in German bears no such places, like the kinds it may be called after: here they are again. */
const inGerman = new Map(
  [
    ...Object.values(kinds).map(({ name }) => name),
    "Eingangs\u00ADkabel links",
    "Eingangs\u00ADkabel rechts",
    "Tisch\u00ADverstärker",
  ].map((name) => [name.replaceAll("\u00AD", ""), name]),
);

/** A name as it is shown by itself: 'Kopfhörer 2'. */
export function shownName(id: string): string {
  const [, stem = id, number = ""] = id.match(/^(.*?)( \d+)$/) ?? [];
  const shown = given[stem] ?? inGerman.get(stem);
  return shown === undefined ? id : `${shown}${number}`;
}

/** What the catalogue calls ends and contacts; what stands on a box is not translated, and numbers stay as they are. */
const ours: Readonly<Record<string, string>> = {
  far: "hinten",
  left: "links",
  near: "vorn",
  output: "Ausgang",
  pin: "Pin",
  plug: "Stecker",
  plugs: "Stecker",
  right: "rechts",
  ring: "Ring",
  sleeve: "Schaft",
  socket: "Buchse",
  stem: "Stamm",
  tip: "Spitze",
};
const known = new RegExp(`\\b(${Object.keys(ours).join("|")})\\b`, "g");

/** A plug or a contact by what it is called: 'vorn links'. */
export const endName = (name: string): string => name.replace(known, (word) => ours[word] ?? word);

/** A socket, which bears what stands on its box unless the name is ours. */
export const socketName = (name: string): string =>
  /^(output \d+|socket|plugs)$/.test(name) ? endName(name) : name;

/** A plug of a part that has several. */
export const plugWords = (plug: string): string => `Stecker »${endName(plug)}«`;

/** A socket or a spot on a part, in brackets: what stands on a box is not translated. */
export function spotWords(at: string): string {
  const name = socketName(at);
  return name === at ? `(Buchse »${at}«)` : `(${name})`;
}

/** A part, or a socket of it, in quotation marks: no article, so no case. */
export function quoted(place: string): string {
  const [part = place, socket] = place.split(", ");
  const name = `»${shownName(part)}«`;
  return socket === undefined ? name : `${name} ${spotWords(socket)}`;
}

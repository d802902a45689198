import type { Contact, PlugKind } from "#core/parts/plugs.ts";
import { choices, parameters } from "./german-parameters.ts";
import { kinds } from "./german-parts.ts";
import type { PatchingWords } from "./patching-words.ts";

const contacts: Readonly<Partial<Record<string, string>>> = {
  tip: "Spitze",
  ring: "Ring",
  "ring 2": "Ring 2",
  sleeve: "Schaft",
  "pin 1": "Pin 1, Schirm",
  "pin 2": "Pin 2, heiß",
  "pin 3": "Pin 3, kalt",
};
const onRca: Readonly<Partial<Record<Contact, string>>> = { tip: "Stift", sleeve: "Kragen" };
const onLink: Readonly<Partial<Record<Contact, string>>> = { tip: "links", ring: "rechts" };

function contact(name: Contact, plug: PlugKind): string {
  if (plug === "RCA") return onRca[name] ?? contacts[name] ?? name;
  return plug === "link" ? (onLink[name] ?? "die Luft") : (contacts[name] ?? name);
}

const between = (hot: string, cold: string): string =>
  `das Signal zwischen ${hot} und ${cold}, sonst mit nichts verbunden`;

const stages: PatchingWords["stages"] = {
  "impedance-balanced": {
    name: "impedanzsymmetrisch",
    carries: (hot, cold) => `das Signal auf ${hot}, nichts auf ${cold}`,
    manual: "„impedance balanced“; üblich bei kleinen Mischpulten",
  },
  "actively balanced": {
    name: "aktiv symmetrisch",
    carries: (hot, cold) => `das Signal auf ${hot}, dasselbe verpolt auf ${cold}`,
    manual: "„symmetrisch“ oder „electronically balanced“",
  },
  "cross-coupled": {
    name: "kreuzgekoppelt",
    carries: between,
    manual: "„servosymmetrisch“ oder „cross-coupled“",
  },
  transformer: {
    name: "Übertrager",
    carries: between,
    manual: "„trafosymmetrisch“ oder „erdfreier Ausgang“",
  },
  "quasi-balanced": {
    name: "quasisymmetrisch",
    carries: (hot, cold, screen) =>
      `das Signal auf ${hot}, sein Rückleiter auf ${cold}, ${screen} unbelegt`,
    manual: "„Schaft nicht angeschlossen“",
  },
  unbalanced: {
    name: "unsymmetrisch",
    carries: (hot, cold) => `das Signal auf ${hot}, ${cold} gibt es nicht`,
    manual: "„unsymmetrisch“ oder „TS“",
  },
  "unbalanced, ring tied to sleeve": {
    name: "unsymmetrisch, Ring am Schaft",
    carries: (hot, cold, screen) => `das Signal auf ${hot}, ${cold} mit ${screen} verbunden`,
    manual: "„unsymmetrisch“, an einer Klinke mit drei Kontakten",
  },
};

const harms: PatchingWords["harms"] = {
  "loudspeaker output": {
    stop: "Nichts in diese Buchse stecken.",
    why: "Sie treibt Lautsprecher. In einen Kopfhörer von 32 Ω kann sie 12 W liefern, mehr als 140 dB am Ohr, und er brennt durch.",
    instead: "Eine Kopfhörerbuchse nehmen, oder einen Line-Ausgang in einen Kopfhörerverstärker.",
  },
  "phantom power": {
    stop: "Halt: Phantomspeisung.",
    why: "An dieser Buchse können 48 V liegen. Eine Klinke berührt beim Einstecken die falschen Kontakte.",
    instead:
      "Erst die Phantomspeisung abschalten, eine Minute warten, dann leiser drehen und stecken.",
  },
  "balanced headphone output": {
    stop: "Diese Buchse nicht auf einen Stereostecker adaptieren.",
    why: "Jede Seite hat an beiden Enden der Kapsel einen Verstärker. Ein gemeinsamer Rückleiter schließt zwei davon kurz.",
    instead:
      "Den gewöhnlichen Kopfhörerausgang nehmen, oder einen symmetrisch verdrahteten Kopfhörer.",
  },
};

/** What is said before anything is plugged in. Common practice, no source, where a habit of the trade is named. */
export const patching: PatchingWords = {
  kinds,
  contact,
  parameters,
  choices,
  stages,
  harms,
  plugs: {
    TS: "Monoklinke (TS)",
    TRS: "Stereoklinke (TRS)",
    TRRS: "Headset-Klinke (vier Kontakte)",
    XLR: "XLR",
    RCA: "Cinch",
    link: "Funk oder digitale Strecke",
  },
  wants: {
    stereo: "stereo",
    "mono in both ears": "mono auf beiden Ohren",
    "an own mix": "eine eigene Mischung",
    "left ear only": "nur linkes Ohr",
    "right ear only": "nur rechtes Ohr",
  },
  ties: {
    "main fader": "der Pegel folgt dem Summenfader",
    "monitor knob": "der Pegel folgt dem Monitorregler",
    "headphone knob": "der Pegel folgt dem Kopfhörerregler",
    "send knob": "der Pegel folgt dem Send",
    "solo takes it over": "Solo übernimmt ihn",
    "own mix": "es ist eine eigene Mischung, getrennt von der Summe",
    "hiss past half": "ab etwa der Hälfte rauscht es: den Pegel am Verstärker holen",
    "another device chosen": "stumm, solange ein anderes Gerät gewählt ist",
  },
  tones: {
    even: "Der Klang bleibt, wie er ist.",
    thin: "Es klingt dünn: Der Bass fehlt.",
    dull: "Es klingt dumpf: Die Höhen fehlen.",
  },
  hums: {
    none: "Kein Brummen zu erwarten.",
    some: "Etwas Brummen ist möglich.",
    loud: "Lautes Brummen ist wahrscheinlich.",
  },
  humWhy: {
    earths: "Beide hängen am Schutzleiter, und zwei Steckdosen sind nie ganz gleich.",
    leakage: "Ein Netzteil gibt etwas Ableitstrom in den Rückleiter.",
    return:
      "Der Rückleiter ist nicht durchverbunden, und ein Netzteil streut in das, was zu hören ist.",
  },
  units: {
    Ω: "Ω",
    F: "F",
    m: "m",
    AWG: "AWG",
    outputs: "",
    sets: "",
    s: "s",
    dB: "dB",
    times: "von voll",
  },
  care: [
    "Erst leiser drehen, an beiden Enden, bevor eine Hand an einen Stecker geht.",
    "Phantomspeisung aus, bevor etwas von XLR auf Klinke geht.",
    "Nie Kopfhörer oder ein Signal in eine Lautsprecherbuchse.",
    "Netzstecker ziehen, bevor ein Gerät geöffnet wird. Nie den Schutzleiter abklemmen.",
    "Es kribbelt am Metall: aufhören, Netzstecker ziehen, Elektrofachkraft holen. Örtliche Vorschriften gehen dieser Seite vor.",
    "In-Ears werden nicht geteilt.",
  ],
};

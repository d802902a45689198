import type { sound as english } from "#ui/words/english/terms-sound.ts";
import type { Term } from "#ui/words/term-names.ts";

export const sound: Readonly<Record<keyof typeof english, Term>> = {
  "belt pack": {
    term: "Taschenempfänger, Beltpack",
    text: "Der kleine Empfänger oder Verstärker am Gürtel, in den In-Ears gesteckt werden. Er hat eine eigene Lautstärke, oft eine Balance und einen Schalter für Mono.",
  },
  "both sides inverted": {
    term: "beide Seiten verpolt",
    text: "Links und rechts sind beide verpolt. Zwischen ihnen ändert sich nichts, deshalb merkt es kein Ohr und keine Prüfung hier.",
  },
  crosstalk: {
    term: "Übersprechen",
    text: "Was von einer Seite auf der anderen ankommt, in Dezibel gegen das, was ankommt, wo es soll. Ein Rückleiter mit einigen Ohm macht es, mit umgedrehtem Vorzeichen.",
  },
  dBFS: {
    term: "dBFS",
    text: "Ein Pegel gegen die größte Zahl, die ein Wandler hat. Hier ist es der Effektivwert gegen einen Abtastwert von 1, der lauteste Sinus hat also −3 dBFS; die Norm zählt diesen Sinus als 0.",
  },
  dBu: {
    term: "dBu",
    text: "Ein Pegel gegen 0,775 Volt. Eine symmetrische Leitung am Pult liegt gut ausgesteuert bei +4 dBu.",
  },
  decibel: {
    term: "Dezibel, dB",
    text: "Ein Verhältnis von Pegeln: 6 dB sind die doppelte Spannung, 20 dB die zehnfache, 1 dB ist etwa das Wenigste, was man merkt.",
  },
  difference: {
    term: "Differenz",
    text: "Links minus rechts. Was auf beiden gleich ist, meist die Stimme, ist weg; was an den Seiten ist, bleibt und klingt breit.",
  },
  "ear matrix": {
    term: "Ohrmatrix",
    text: "Vier Zahlen: was jedes Ohr von jeder Seite bekommt. Ein guter Feed hat in jedem Ohr die eigene Seite und nichts von der anderen; jeder Fehler sind andere vier.",
  },
  feed: {
    term: "Feed",
    text: "Was jemand zu hören bekommt, und der Weg dahin: vom Pult bis zu den Ohren.",
  },
  "headphone amplifier": {
    term: "Kopfhörerverstärker",
    text: "Ein Gerät mit einem Eingang und mehreren Ausgängen, jeder mit eigener Lautstärke und stark genug für Kopfhörer. Es hält auch von den anderen fern, was an einem Ausgang schiefgeht.",
  },
  "in-ears": {
    term: "In-Ears",
    text: "Ohrhörer, die den Gehörgang abdichten. Wo die Dichtung undicht ist, fehlt auf dieser Seite der Bass, und kein Kabel ist schuld.",
  },
  "input impedance": {
    term: "Eingangsimpedanz",
    text: "Was ein Eingang dem abverlangt, was ihn speist, in Ohm: 10 kΩ und mehr bei Line, 16 bis 600 Ω bei Kopfhörern.",
  },
  "line level": {
    term: "Line-Pegel",
    text: "Der Pegel zwischen Geräten, etwa ein Volt. Kopfhörer an einem Line-Ausgang sind leise, und der Ausgang wird überlastet.",
  },
  "mono sum": {
    term: "Monosumme",
    text: "Links und rechts addiert, gleich in beiden Ohren. Was auf einer Seite verpolt ist, löscht sich darin aus.",
  },
  "output impedance": {
    term: "Ausgangsimpedanz",
    text: "Der Widerstand in einem Ausgang. Er teilt sich die Spannung mit den Kopfhörern: Je höher er ist, desto mehr nehmen mehrere an einer Buchse einander weg.",
  },
  pan: {
    term: "Panorama, Pan",
    text: "Der Regler, der einen Kanal nach links, in die Mitte oder nach rechts schickt. Auf einem Mono-Send tut er nichts.",
  },
  phase: {
    term: "Phase",
    text: "Wie spät etwas ist, gezählt in Teilen seiner Periode. Oft gesagt, wo Polarität gemeint ist: Die ist bei jeder Frequenz gleich umgedreht.",
  },
  polarity: {
    term: "Polarität",
    text: "Wie herum ein Signal ist: Ein Druck am Mikrofon ist ein Druck am Ohr. Ist eine Seite verpolt, hat die Mitte keinen Ort und klingt hohl.",
  },
  position: {
    term: "Platz",
    text: "Wo jemand hört, mit dem, was dort getragen wird. Ein Rundgang führt von einem zum nächsten.",
  },
  round: {
    term: "Rundgang",
    text: "Der Gang von Platz zu Platz vor einer Vorstellung, bei dem alle Kopfhörer gehört werden.",
  },
  send: {
    term: "Send, Aux",
    text: "Ein Ausgang des Pults mit eigener Mischung, meist mono. Sein Panorama und seine Regler sind andere als die der Hauptausgänge.",
  },
  side: {
    term: "Seite",
    text: "Links oder rechts. Hier gefüllt und umrandet gezeichnet, und immer mit dem Buchstaben.",
  },
  solo: {
    term: "Solo, PFL",
    text: "Eine Taste, die einen Kanal allein auf die Kopfhörer legt, oft in Mono. Bleibt sie gedrückt, übernimmt sie die Buchse, die alle speist.",
  },
  swapped: {
    term: "vertauscht",
    text: "Links im rechten Ohr und rechts im linken: zwei Stecker getauscht oder Kopfhörer verkehrt herum auf.",
  },
  trunk: {
    term: "Stamm",
    text: "Was alle Plätze teilen, von der Quelle bis dahin, wo sich ihre Wege trennen. Ein Fehler darin ist bei allen zu hören und wird zuerst behoben.",
  },
};

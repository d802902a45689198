import type { wires as english } from "#ui/words/english/terms-wires.ts";
import type { Term } from "#ui/words/term-names.ts";

export const wires: Readonly<Record<keyof typeof english, Term>> = {
  balanced: {
    term: "symmetrisch",
    text: "Ein Signal auf zwei Leitern, Heiß und Kalt, deren Differenz der Eingang nimmt: Was beide unterwegs auffangen, ist weg. Eine Kopfhörerbuchse ist nicht symmetrisch, obwohl ihr Stecker derselbe ist.",
  },
  cold: {
    term: "Kalt",
    text: "Der Leiter einer symmetrischen Leitung, der das Signal umgedreht trägt oder gar keines: Pin 3 am XLR, der Ring einer symmetrischen Klinke.",
  },
  contact: {
    term: "Kontakt",
    text: "Die Stelle, an der ein Stecker seine Buchse berührt. Schmutz oder eine müde Feder geben ihm einige Ohm oder lassen ihn kommen und gehen.",
  },
  ground: {
    term: "Masse, Erde",
    text: "Wogegen alle Spannungen zählen. Im Kopfhörerkabel ist sie der Rückleiter; am Netz schützt sie Menschen und wird nie abgeklemmt.",
  },
  "ground loop": {
    term: "Brummschleife",
    text: "Zwei Geräte, die über die Masse eines Kabels und über die Netzerde verbunden sind. Ein Strom mit der Netzfrequenz fließt im Kreis und ist als Brummen zu hören.",
  },
  "headset plug": {
    term: "Headset-Stecker, vierpolige Klinke",
    text: "Ein 3,5-mm-Stecker mit vier Kontakten: links, rechts, dazu Masse und Mikrofon in einer von zwei Reihenfolgen. In der falschen Buchse läuft der Rückleiter durchs Mikrofon, und die Mitte ist weg.",
  },
  hot: {
    term: "Heiß",
    text: "Der Leiter einer symmetrischen Leitung, der das Signal richtig herum trägt: Pin 2 am XLR, die Spitze einer symmetrischen Klinke.",
  },
  "impedance-balanced": {
    term: "impedanzsymmetrisch",
    text: "Ein symmetrischer Ausgang, dessen kalter Leiter nichts trägt und nur denselben Widerstand gegen Masse hat. An einer Stereobuchse spielt er auf einem Ohr.",
  },
  insert: {
    term: "Insert",
    text: "Eine Klinkenbuchse im Kanal, hinaus auf einem Kontakt und zurück auf dem anderen. Ein Stecker, bis zum ersten Klick gezogen, nimmt das Signal ab, ohne den Weg zu unterbrechen.",
  },
  "insert Y": {
    term: "Insert-Kabel, Y-Kabel",
    text: "Ein Kabel von einer Stereoklinke auf zwei Monoklinken, Spitze auf die eine und Ring auf die andere. Von zwei Ausgängen in einen Stereoeingang macht es Stereo.",
  },
  leg: {
    term: "Ader",
    text: "Einer der beiden Signalleiter in einer symmetrischen Leitung. Links und rechts sind Seiten, keine Adern.",
  },
  "load box": {
    term: "Lastbox",
    text: "Zwei gleiche Widerstände, deren Sternpunkt an nichts als dem Schaft eines Kabels liegt. Nur damit oder mit Kopfhörern sieht eine Messung einen unterbrochenen Rückleiter.",
  },
  normalled: {
    term: "normalisiert",
    text: "In einer Buchse verbunden, solange kein Stecker darin steckt. „Left/Mono“ speist beide Seiten, solange die rechte Buchse leer ist.",
  },
  "not home": {
    term: "nicht ganz gesteckt",
    text: "Ein Stecker, der nicht bis zum Anschlag steckt, sodass Federn auf falschen Kontakten stehen. Der häufigste Fehler von allen, und mit einem Druck behoben.",
  },
  "passive splitter": {
    term: "passiver Verteiler",
    text: "Eine Buchse auf mehrere verdrahtet, ohne Verstärker dazwischen. Alles daran ist ein Stromkreis: Ein Fehler in einem Kabel ist bei allen zu hören.",
  },
  return: {
    term: "Rückleiter, Masse",
    text: "Der Leiter, den beide Seiten auf dem Rückweg teilen, der Schaft eines Kopfhörersteckers. Ist er unterbrochen, bekommen beide Ohren links minus rechts.",
  },
  ring: {
    term: "Ring",
    text: "Der mittlere Kontakt einer Stereoklinke: die rechte Seite eines Stereo-Feeds, Kalt einer symmetrischen Leitung.",
  },
  screen: {
    term: "Schirm",
    text: "Das Geflecht oder die Folie um die Leiter eines Kabels, die Brummen fernhält. In einem unsymmetrischen Kabel ist er zugleich der Rückleiter.",
  },
  sleeve: {
    term: "Schaft",
    text: "Der Kontakt eines Steckers gleich an seinem Gehäuse: die Masse von Kopfhörern, der Schirm einer symmetrischen Leitung.",
  },
  "strain relief": {
    term: "Zugentlastung",
    text: "Wo ein Kabel in seinen Stecker geht. Dort wird es am meisten gebogen und bricht zuerst.",
  },
  tip: {
    term: "Spitze",
    text: "Der vorderste Kontakt eines Steckers: die linke Seite eines Stereo-Feeds, Heiß einer symmetrischen Leitung, das Signal einer Monoklinke.",
  },
  TRS: {
    term: "TRS, Stereoklinke",
    text: "Ein Stecker mit drei Kontakten: Spitze, Ring und Schaft. Er trägt entweder zwei Seiten mit gemeinsamer Masse oder ein symmetrisches Signal, und man sieht ihm nicht an, welches.",
  },
  TS: {
    term: "TS, Monoklinke",
    text: "Ein Stecker mit zwei Kontakten, Spitze und Schaft, für ein unsymmetrisches Signal. In einer Stereobuchse schließt er die rechte Seite kurz.",
  },
  unbalanced: {
    term: "unsymmetrisch",
    text: "Ein Signal auf einem Leiter gegen den Schirm, der zugleich sein Rückleiter ist. Gut für einige Meter.",
  },
  XLR: {
    term: "XLR",
    text: "Ein runder Stecker mit Verriegelung und drei Pins: 1 Schirm, 2 Heiß, 3 Kalt.",
  },
};

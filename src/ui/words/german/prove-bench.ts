import type { Words } from "#ui/words/use-words.ts";

type Side = "left" | "right" | undefined;

const output = (side: Side): string => {
  if (side === undefined) return "in den Kopfhörerausgang";
  return side === "left" ? "in den linken Ausgang" : "in den rechten Ausgang";
};
const input = (side: "left" | "right", what: string): string =>
  `in den ${side === "left" ? "linken" : "rechten"} ${what}`;
const bentMost = "zuerst den Stecker, an dem das Kabel am meisten geknickt wird, dann den anderen";

export const proveBench: Words["proveBench"] = {
  titles: {
    ear: "Zwischen Geräte stecken, die sicher in Ordnung sind.",
    return: "Aus dem Interface, durch das Kabel, wieder hinein.",
    "load box": "Aus dem Interface, durch das Kabel, in die Lastbox.",
    meter: "An beiden Enden abziehen.",
  },
  compare:
    "Gibt es ein gleiches, das sicher in Ordnung ist, dieses zuerst einstecken: Daran wird gemessen, was das hier verliert.",
  plugged: "Eingesteckt",
  headphones: "Gute Kopfhörer in den Kopfhörerverstärker, L auf das linke Ohr.",
  goodLead: "Ein gutes Kabel in die Kupplung von diesem.",
  plug: (letter, mark) => (mark === undefined ? letter : `Stecker ${letter} ${mark}`),
  thatLead: "Das gute Kabel",
  fromPlayer: (plug, side) => `${plug} ${output(side)} der Quelle.`,
  fromCard: (plug, side) => `${plug} ${output(side)} des Interface.`,
  far: {
    ear: (plug, side) =>
      side === undefined
        ? `${plug} in den Stereoeingang eines Kopfhörerverstärkers.`
        : `${plug} ${input(side, "Eingang")} eines Kopfhörerverstärkers.`,
    return: (plug, side) =>
      side === undefined
        ? `${plug} in die Line-Eingänge des Interface, Spitze auf den ersten, Ring auf den zweiten.`
        : `${plug} ${input(side, "Line-Eingang")} des Interface.`,
    "load box": (plug, side) => {
      if (side === undefined) return `${plug} in die Buchse der Lastbox.`;
      return `${plug} in die ${side === "left" ? "linke" : "rechte"} Buchse der Lastbox.`;
    },
    meter: (plug) => `${plug} bleibt frei.`,
  },
  loadBox: {
    label: (signals, back) =>
      `Von ${signals.join(" und von ")} je ein Widerstand von 33 Ohm auf einen gemeinsamen Punkt, dieser Punkt nur an ${back}; jeder Widerstand wird von einem symmetrischen Eingang gemessen.`,
    hot: (number) => `In ${number}, heiß`,
    cold: "kalt",
    resistors: ([one = "", other], sockets) =>
      `${sockets > 1 ? "Zwei Buchsen, jede mit: ein" : "Ein"} Widerstand, 33 Ω, 1 %, von ${one} auf einen Punkt${other === undefined ? "" : `; ein zweiter von ${other} auf denselben Punkt`}.`,
    point: (back) =>
      `Dieser Punkt an ${back} der Buchse und an nichts sonst: kein Gehäuse, keine Masse eines Eingangs.`,
    inputs: (signals) =>
      `Jeder Widerstand an einen eigenen symmetrischen Eingang: heiß an ${signals.join(" oder ")}, kalt an den Punkt. Die Masse des Eingangs bleibt frei.`,
    why: "Ein Interface, das sich selbst speist, hat die Massen schon verbunden: Ohne Lastbox misst sich ein Kabel ohne Rückleiter als heil. Mit ihr führt nur der Rückleiter zurück.",
    cautions: [
      "Löten, wenn nichts eingesteckt ist, an frischer Luft, mit Augenschutz.",
      "Phantomspeisung an beiden Eingängen aus, bevor etwas eingesteckt wird.",
      "Nie an einen Lautsprecherausgang: Die Widerstände brennen.",
    ],
  },
  place: {
    lead: "Kabel A–B",
    plug: (end) => `Stecker ${end}`,
    socket: (end) => `Kupplung ${end}`,
  },
  noFault: "kein Fehler dieses Kabels passt zu dem, was gefunden wurde",
  mend: {
    unlisted:
      "Nachsehen, ob beide Enden richtig eingesteckt sind und ob es ein Kabel dieser Art ist, und noch einmal prüfen. Kontakt für Kontakt zeigt ein Multimeter, was es ist.",
    exchanged: (moved, where) =>
      `${where === undefined ? "Umlöten am Ende, das nicht wie gezeichnet gelötet ist; beide öffnen und nachsehen" : `Umlöten, ${where}`}: ${moved
        .map(({ to, on, from }) => `${to} hängt an ${on} und gehört an ${from}`)
        .join("; ")}.`,
    open: (one, other, joint, where) =>
      `Zwischen ${one} und ${other} keine Verbindung. ${where === undefined ? `Öffnen: ${bentMost}` : `${where} öffnen`}; ${joint} nachlöten oder das Kabel eine Handbreit kürzen, wo es innen gebrochen ist.`,
    comesAndGoes: (one, other) =>
      `Wackelkontakt zwischen ${one} und ${other}. Handbreit für Handbreit biegen, um die Stelle zu finden; meist an der Zugentlastung: Kabel kürzen und neu löten.`,
    resistive: (one, other, ohms, joint, where) =>
      `Zwischen ${one} und ${other} liegen ${ohms}. Beide Kontakte reinigen und noch einmal messen; bleibt es dabei, ${joint} nachlöten (${where ?? "an beiden Enden"}).`,
    joined: (one, other, where) =>
      `${one} und ${other} berühren sich und sollen es nicht. ${where ?? "Beide Stecker"} öffnen: nach einer Litze des Schirms, einer Zinnbrücke oder geschmolzenem Kunststoff suchen.`,
  },
};

import type { wearingNames } from "#core/parts/names-wearing.ts";
import { words } from "./fault-words.ts";
import { replace } from "./german-wires.ts";
import type { FaultWords } from "./language.ts";

const hidden = "nicht zu sehen";
/** Which side is upside down cannot be heard, so neither is named. */
const oneInverted = words(
  "in @ ist eine Seite verpolt",
  hidden,
  "@ ersetzen; eine Muschel wurde falsch herum angelötet",
);
const hearsLess = (side: string): FaultWords =>
  words(
    `@ hört ${side} vielleicht schwächer`,
    hidden,
    "mit geprüftem Kopfhörer gegenhören; hier werden Signale geprüft, keine Ohren: Wer sich sorgt, geht zum Arzt",
  );
const driver = (how: string): FaultWords => words(`in @ ist ${how}`, hidden, replace);
const weak = (side: string): FaultWords =>
  words(
    `in @ ist die ${side} Kapsel schwach, durch Feuchtigkeit oder Alter`,
    hidden,
    "@ ersetzen; trocknen lassen und an der Werkbank noch einmal prüfen",
  );
const reversedPins = words(
  "in @ ist eine Seite verpolt: Ihr Zweipolstecker sitzt falsch herum",
  hidden,
  "von @ an einer Seite den Zweipolstecker abziehen und umgedreht aufstecken; hören; ist es schlechter, zurück und die andere Seite umdrehen",
);
const atTheEar = (side: string): FaultWords =>
  words(
    `das Kabel von @ ist am ${side} Ohr gebrochen`,
    hidden,
    "an @ ein anderes Kabel stecken; es bricht dort, wo es sich übers Ohr biegt",
  );
const dirtyPins = (side: string): FaultWords =>
  words(
    `in @ sind die beiden Stifte ${side} verschmutzt`,
    hidden,
    "von @ den Zweipolstecker einige Male abziehen und wieder aufstecken",
  );
const sealLost = (where: string): FaultWords =>
  words(
    `der Aufsatz von @ dichtet ${where} nicht ab: schwach und ohne Bass`,
    "sitzt locker im Ohr",
    "@ fester ins Ohr drücken lassen, oder Aufsätze anderer Größe nehmen",
  );
const wax = (side: string): FaultWords =>
  words(
    `in @ ist das Gitter ${side} verstopft`,
    "Ohrenschmalz im Gitter",
    "@ vom Träger reinigen lassen, oder den Filter wechseln",
  );

/** Common practice, no source, where a repair is named. */
export const wearing: Readonly<Record<(typeof wearingNames)[number], FaultWords>> = {
  "left driver dead": driver("die linke Kapsel tot"),
  "right driver dead": driver("die rechte Kapsel tot"),
  "left driver inverted": oneInverted,
  "right driver inverted": oneInverted,
  "both drivers inverted": words(
    "in @ sind beide Seiten verpolt",
    hidden,
    "zu hören ist davon nichts; @ nur ersetzen, wo mit einem anderen verglichen wird",
  ),
  "left driver weak": weak("linke"),
  "right driver weak": weak("rechte"),
  "left voice coil shorted": driver("die linke Schwingspule kurzgeschlossen"),
  "right voice coil shorted": driver("die rechte Schwingspule kurzgeschlossen"),
  "pin order of the other kind": words(
    "@ hat die andere Belegung, als die Buchse verlangt",
    hidden,
    "statt @ einen anderen nehmen, oder einen Adapter davor, der die beiden hinteren Kontakte kreuzt; mit gedrückter Mikrofontaste kommt der Ton zurück",
  ),
  "microphone button stuck": words(
    "in @ klemmt die Mikrofontaste",
    hidden,
    "die Mikrofontaste von @ einige Male drücken; wird das Mikrofon dann nicht gehört, ersetzen",
  ),
  "left low driver dead": driver("die linke Tieftonkapsel tot"),
  "right low driver dead": driver("die rechte Tieftonkapsel tot"),
  "left high driver dead": driver("die linke Hochtonkapsel tot"),
  "right high driver dead": driver("die rechte Hochtonkapsel tot"),
  "left two-pin plug reversed": reversedPins,
  "right two-pin plug reversed": reversedPins,
  "left cable broken at the ear": atTheEar("linken"),
  "right cable broken at the ear": atTheEar("rechten"),
  "left pins dirty": dirtyPins("links"),
  "right pins dirty": dirtyPins("rechts"),
  "earpieces exchanged": words(
    "in @ hängen die Hörer am Kabel des jeweils anderen",
    "L hängt am rechten Bein",
    "von @ jeden Hörer an sein eigenes Kabel stecken; dem Ton glauben, nicht dem Buchstaben",
  ),
  "left seal lost": sealLost("links"),
  "right seal lost": sealLost("rechts"),
  "both seals lost": sealLost("auf beiden Seiten"),
  "wax on the left": wax("links"),
  "wax on the right": wax("rechts"),
  "worn backwards": words(
    "@ trägt den Kopfhörer falsch herum",
    "L ist am rechten Ohr",
    "den Kopfhörer umdrehen: L ans linke Ohr",
  ),
  "left ear hears less": hearsLess("links"),
  "right ear hears less": hearsLess("rechts"),
  "mirrors left and right": words(
    "@ verwechselt links und rechts",
    hidden,
    "jemand anderen fragen statt @; oder fragen, welche Muschel berührt wird, nicht links oder rechts",
  ),
};

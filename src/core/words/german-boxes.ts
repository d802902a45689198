import type { boxNames } from "#core/parts/names-boxes.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const hidden = "nicht zu sehen";
const fiveTimes = "an @ fünfmal ein- und ausstecken; kommt es wieder, eine andere Buchse nehmen";
const deadOutput = (what: string): FaultWords =>
  words(`an @ ist ${what} tot`, hidden, "statt @ einen anderen Ausgang nehmen");
const deadInput = (side: string): FaultWords =>
  words(
    `an @ ist die ${side} Seite des Eingangs tot`,
    hidden,
    "an @ fünfmal ein- und ausstecken; dann einen anderen nehmen",
  );
const uneven = (side: string): FaultWords =>
  words(
    `der Lautstärkeregler von @ läuft ganz unten ungleich, die ${side} Seite ist schwächer`,
    hidden,
    "das Signal vor @ leiser, dann den Regler über ein Viertel aufdrehen: Dort laufen die Seiten gleich",
  );

/** Common practice, no source, where a repair is named. */
export const boxes: Readonly<Record<(typeof boxNames)[number], FaultWords>> = {
  "left side of the output dead": deadOutput("die linke Seite"),
  "right side of the output dead": deadOutput("die rechte Seite"),
  "output dead": deadOutput("der Ausgang"),
  "left side of the input dead": deadInput("linke"),
  "right side of the input dead": deadInput("rechte"),
  "return spring of the socket worn": words(
    "an @ ist die Feder des Rückleiters ausgeleiert",
    hidden,
    fiveTimes,
  ),
  "normal does not close": words(
    "an @ erreicht die linke Buchse die rechte Seite nicht, obwohl die rechte Buchse frei ist",
    hidden,
    "in die rechte Buchse von @ fünfmal ein- und ausstecken, oder beide Buchsen speisen",
  ),
  "normal does not open": words(
    "an @ bleiben die beiden Buchsen verbunden, obwohl beide belegt sind",
    hidden,
    fiveTimes,
  ),
  "volume knob uneven, left weaker": uneven("linke"),
  "volume knob uneven, right weaker": uneven("rechte"),
  "battery flat": words(
    "die Batterie von @ ist leer",
    "kein Licht, oder eine Warnung in der Anzeige",
    "in @ eine frische Batterie einsetzen, vorher leiser drehen",
  ),
};

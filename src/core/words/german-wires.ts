import type { wireNames } from "#core/parts/names-wires.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const hidden = "nicht zu sehen";
/** For what only another part mends. */
export const replace = "@ ersetzen; reparieren erst an der Werkbank, nicht beim Soundcheck";
const twist = "@ gegen etwas Geprüftes tauschen; vielleicht sind nur die Kontakte zu reinigen";
const wrongOrder = (how: string): FaultWords =>
  words(
    `in @ ${how}`,
    hidden,
    "@ ersetzen; falsch verdrahtet, der Stecker muss neu gelötet werden",
  );
const home = (what: string): FaultWords =>
  words(`@ steckt nicht ganz: ${what}`, "nicht ganz eingesteckt", "@ hineindrücken, bis es klickt");
const dirty = (what: string): FaultWords => words(`in @ hat ${what} durch Schmutz`, hidden, twist);
const broken = (what: string): FaultWords => words(`in @ ist ${what} unterbrochen`, hidden, twist);
const touching = (what: string): FaultWords =>
  words(`in @ haben ${what} Kurzschluss`, hidden, replace);
const oxidised = (what: string): FaultWords =>
  words(
    `an @ ${what}`,
    hidden,
    "an @ fünfmal ein- und ausstecken; kommt es wieder, mit einem Kabel überbrücken",
  );
const uneven = (side: string): FaultWords =>
  words(
    `der Regler von @ steht so tief, dass die ${side} Seite schwächer ist`,
    "fast ganz zugedreht",
    "die Quelle leiser und den Regler von @ aufdrehen",
  );

/** Common practice, no source, where a repair is named. */
export const wires: Readonly<Record<(typeof wireNames)[number], FaultWords>> = {
  "tip open": broken("die Spitze"),
  "ring open": broken("der Ring"),
  "sleeve open": words("in @ ist der Rückleiter unterbrochen", hidden, twist),
  "tip and ring shorted": touching("Spitze und Ring"),
  "tip and sleeve shorted": touching("Spitze und Schaft"),
  "ring and sleeve shorted": touching("Ring und Schaft"),
  "tip and ring exchanged": wrongOrder("sind Spitze und Ring vertauscht"),
  "tip and sleeve exchanged": wrongOrder("sind Spitze und Schaft vertauscht"),
  "ring and sleeve exchanged": wrongOrder("sind Ring und Schaft vertauscht"),
  "contacts turned, tip to ring": wrongOrder("sind die Kontakte reihum versetzt, Spitze auf Ring"),
  "contacts turned, tip to sleeve": wrongOrder(
    "sind die Kontakte reihum versetzt, Spitze auf Schaft",
  ),
  "return of 3 ohms": dirty("der Rückleiter etwa 3 Ω"),
  "return of 10 ohms": dirty("der Rückleiter etwa 10 Ω"),
  "return of 30 ohms": dirty("der Rückleiter etwa 30 Ω"),
  "return of 300 ohms": dirty("der Rückleiter etwa 300 Ω"),
  "tip of 30 ohms": dirty("die Spitze etwa 30 Ω"),
  "tip of 300 ohms": dirty("die Spitze etwa 300 Ω"),
  "ring of 30 ohms": dirty("der Ring etwa 30 Ω"),
  "ring of 300 ohms": dirty("der Ring etwa 300 Ω"),
  "shell open": words("in @ ist der Kragen, also der Rückleiter, unterbrochen", hidden, twist),
  "tip and shell shorted": touching("Stift und Kragen"),
  "tip and shell exchanged": wrongOrder("sind Stift und Kragen vertauscht"),
  "screen open": broken("der Schirm (Pin 1)"),
  "hot open": broken("die heiße Ader (Pin 2)"),
  "cold open": broken("die kalte Ader (Pin 3)"),
  "hot and cold shorted": touching("heiß und kalt (Pins 2 und 3)"),
  "hot and screen shorted": touching("heiße Ader und Schirm (Pins 2 und 1)"),
  "cold and screen shorted": touching("kalte Ader und Schirm (Pins 3 und 1)"),
  "hot and cold exchanged": wrongOrder("sind heiß und kalt (Pins 2 und 3) vertauscht"),
  "hot and screen exchanged": wrongOrder("sind heiße Ader und Schirm (Pins 2 und 1) vertauscht"),
  "cold and screen exchanged": wrongOrder("sind kalte Ader und Schirm (Pins 3 und 1) vertauscht"),
  "pins turned, 1 to 2": wrongOrder("sind die Pins reihum versetzt, 1 auf 2"),
  "pins turned, 1 to 3": wrongOrder("sind die Pins reihum versetzt, 1 auf 3"),
  "return open": words("in @ ist der Rückleiter unterbrochen", hidden, twist),
  "microphone open": broken("der Mikrofonkontakt"),
  "ring and second ring shorted": touching("Ring und zweiter Ring"),
  "second ring and sleeve shorted": touching("zweiter Ring und Schaft"),
  "made for the other pin order": words(
    "@ ist für die andere Belegung gebaut: Rückleiter und Mikrofon sind vertauscht",
    hidden,
    "@ gegen einen Adapter mit der Belegung dieses Geräts tauschen",
  ),
  "adapter loose": words(
    "@ sitzt locker, der Rückleiter hat keinen Kontakt",
    "nicht festgeschraubt",
    "@ festschrauben und den Stecker hineindrücken, bis es klickt",
  ),
  "wheel uneven, left weaker": uneven("linke"),
  "wheel uneven, right weaker": uneven("rechte"),
  "normal's tip open": oxidised("öffnet der Schaltkontakt der Spitze"),
  "normal's ring open": oxidised("öffnet der Schaltkontakt des Rings"),
  "normal's tip of 10 kilohms": oxidised("hat der Schaltkontakt der Spitze etwa 10 kΩ Oxid"),
  "normal's ring of 10 kilohms": oxidised("hat der Schaltkontakt des Rings etwa 10 kΩ Oxid"),
  "not home, return off": home("der Rückleiter hat keinen Kontakt"),
  "not home, ring on the insulator": home("der Ring hat keinen Kontakt"),
  "not home, both on the tip": home("beide Federn liegen auf der Spitze"),
  "not home, first click": home("nur bis zum ersten Klick"),
  "not home, sleeve on the ring": home("die Schaftfeder liegt auf dem Ring"),
  "lead with two contacts": words(
    "@ hat zwei Kontakte am Stecker, wo drei nötig sind",
    "Stecker mit einem schwarzen Ring (TS)",
    "statt @ ein Stereokabel (TRS) nehmen: zwei schwarze Ringe an jedem Stecker",
  ),
  "both sides on one contact": words("in @ hängen beide Seiten an einem Kontakt", hidden, replace),
  "legs exchanged": words(
    "in @ sind die Beine vertauscht angelötet: Was links heißt, ist rechts",
    hidden,
    "von @ das linke Bein dort einstecken, wo das rechte hingehört, und umgekehrt; dann neu beschriften",
  ),
  "wrong socket": words(
    "@ steckt in der falschen Buchse",
    "in der falschen Buchse",
    "@ in die richtige Buchse umstecken",
  ),
  "sides exchanged": words(
    "die beiden Stecker von @ sind vertauscht eingesteckt",
    "die beiden Stecker vertauscht",
    "die beiden Stecker von @ tauschen; dem Ton glauben, nicht der Farbe",
  ),
};

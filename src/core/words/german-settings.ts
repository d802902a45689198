import type { settingNames } from "#core/parts/names-settings.ts";
import { words } from "./fault-words.ts";
import { farSettings } from "./german-far-settings.ts";
import type { FaultWords } from "./language.ts";

const balance = (how: string): FaultWords =>
  words(`an @ steht die Balance ${how}`, `Balance ${how}`, "an @ die Balance in die Mitte stellen");
const polarity = (side: "link" | "recht"): FaultWords =>
  words(
    `an @ ist die Phasentaste im ${side}en Kanal gedrückt`,
    `Phasentaste gedrückt, ${side}er Kanal`,
    "an @ die Phasentaste lösen",
  );
const both = "beide Kanäle";

/** Common practice, no source, where a repair is named. */
export const settings: Readonly<Record<(typeof settingNames)[number], FaultWords>> = {
  mono: words("@ ist auf Mono geschaltet", "Mono ist an", "an @ Mono ausschalten"),
  "balance hard left": balance("ganz links"),
  "balance hard right": balance("ganz rechts"),
  "balance far to the left": balance("weit links"),
  "balance far to the right": balance("weit rechts"),
  "balance off to the left": balance("etwas links"),
  "balance off to the right": balance("etwas rechts"),
  "volume down": words(
    "an @ ist die Lautstärke zu",
    "Lautstärke zu",
    "an @ die Lautstärke langsam aufdrehen",
  ),
  "power off": words("@ ist aus", "kein Strom", "alle Regler zu, dann @ einschalten"),
  "polarity button on the left": polarity("link"),
  "polarity button on the right": polarity("recht"),
  "left panned hard right": words(
    "an @ liegt der linke Kanal im Panorama ganz rechts",
    "linker Kanal ganz rechts",
    "an @ den linken Kanal ganz nach links legen",
  ),
  "right panned hard left": words(
    "an @ liegt der rechte Kanal im Panorama ganz links",
    "rechter Kanal ganz links",
    "an @ den rechten Kanal ganz nach rechts legen",
  ),
  "left panned to the middle": words(
    "an @ liegt der linke Kanal im Panorama in der Mitte",
    "linker Kanal in der Mitte",
    "an @ den linken Kanal ganz nach links legen",
  ),
  "right panned to the middle": words(
    "an @ liegt der rechte Kanal im Panorama in der Mitte",
    "rechter Kanal in der Mitte",
    "an @ den rechten Kanal ganz nach rechts legen",
  ),
  "left soloed": words(
    "an @ ist der linke Kanal auf Solo und übernimmt die Kopfhörerbuchse",
    "linker Kanal auf Solo",
    "an @ Solo lösen",
  ),
  "right soloed": words(
    "an @ ist der rechte Kanal auf Solo und übernimmt die Kopfhörerbuchse",
    "rechter Kanal auf Solo",
    "an @ Solo lösen",
  ),
  "left channel down": words(
    "an @ ist der linke Kanal zu oder stumm",
    "linker Kanal zu",
    "an @ den linken Kanal so weit aufziehen wie den rechten",
  ),
  "right channel down": words(
    "an @ ist der rechte Kanal zu oder stumm",
    "rechter Kanal zu",
    "an @ den rechten Kanal so weit aufziehen wie den linken",
  ),
  "both channels panned to the middle": words(
    `an @ liegen ${both} im Panorama in der Mitte`,
    `${both} in der Mitte`,
    "an @ den linken Kanal ganz nach links und den rechten ganz nach rechts legen",
  ),
  "both channels panned left": words(
    `an @ liegen ${both} im Panorama links`,
    `${both} links`,
    "an @ den rechten Kanal ganz nach rechts legen",
  ),
  "both channels panned right": words(
    `an @ liegen ${both} im Panorama rechts`,
    `${both} rechts`,
    "an @ den linken Kanal ganz nach links legen",
  ),
  "pad in on the left channel": words(
    "an @ ist das Pad im linken Kanal gedrückt",
    "Pad gedrückt, linker Kanal",
    "an @ den linken Kanal leiser drehen, dann das Pad lösen",
  ),
  "pad in on the right channel": words(
    "an @ ist das Pad im rechten Kanal gedrückt",
    "Pad gedrückt, rechter Kanal",
    "an @ den rechten Kanal leiser drehen, dann das Pad lösen",
  ),
  "main fader down": words(
    "an @ ist der Summenfader unten",
    "Summenfader unten",
    "an @ den Summenfader langsam hochziehen, oder aus einer Buchse speisen, die nicht an ihm hängt",
  ),
  "monitor knob down": words(
    "an @ ist der Monitorregler zu",
    "Monitorregler zu",
    "an @ den Monitorregler langsam aufdrehen",
  ),
  "send knob down": words("an @ ist der Send zu", "Send zu", "an @ den Send langsam aufdrehen"),
  "dim on": words(
    "an @ ist Dim an",
    "Dim ist an",
    "den Monitorregler zudrehen, dann an @ Dim ausschalten",
  ),
  "call holds the output in mono": words(
    "ein Anruf oder ein offenes Mikrofon hält den Ausgang von @ in Mono",
    "ein Anruf oder ein offenes Mikrofon auf dem Bildschirm",
    "an @ den Anruf beenden oder das Mikrofon schließen",
  ),
  "application fills the left side only": words(
    "an @ füllt die Anwendung nur die linke Seite",
    "nur die linke Anzeige schlägt aus",
    "an @ die Anwendung auf Stereo stellen, oder aus einer anderen spielen",
  ),
  "application fills the right side only": words(
    "an @ füllt die Anwendung nur die rechte Seite",
    "nur die rechte Anzeige schlägt aus",
    "an @ die Anwendung auf Stereo stellen, oder aus einer anderen spielen",
  ),
  "wrong output device": words(
    "@ spielt auf einem anderen Ausgabegerät",
    "anderes Ausgabegerät gewählt",
    "an @ das Gerät dieser Zuleitung als Ausgabe wählen",
  ),
  "wrong output pair": words(
    "die Anwendung spielt auf einem anderen Ausgangspaar von @",
    "anderes Ausgangspaar gewählt",
    "in der Anwendung das erste Ausgangspaar von @ wählen",
  ),
  "direct monitor turned to the inputs": words(
    "an @ ist das Direct Monitoring auf die Eingänge gedreht, weg von der Wiedergabe",
    "Direct Monitoring auf die Eingänge gedreht",
    "an @ das Direct Monitoring langsam zurück zur Wiedergabe drehen",
  ),
  ...farSettings,
};

import type { settingNames } from "#core/parts/names-settings.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const delayed = (side: string, how: string): FaultWords =>
  words(
    `an @ kommt die ${side} Seite ${how} zu spät`,
    "nicht zu sehen",
    `an @ die Verzögerung der ${side}n Seite auf die der anderen stellen`,
  );
const subscription = (is: string, seen: string): FaultWords =>
  words(is, seen, "an @ links auf links und rechts auf rechts legen");

/** Settings of players, links, radio and processors. Common practice, no source, where a repair is named. */
export const farSettings = {
  "left channel chosen for both": words(
    "@ spielt den linken Kanal auf beiden Seiten",
    "linker Kanal gewählt",
    "@ zurück auf Stereo stellen",
  ),
  "right channel chosen for both": words(
    "@ spielt den rechten Kanal auf beiden Seiten",
    "rechter Kanal gewählt",
    "@ zurück auf Stereo stellen",
  ),
  "blend turned away from the feed": words(
    "an @ ist der Mischregler vom Signal weggedreht",
    "Mischregler beim anderen Eingang",
    "an @ den Mischregler langsam zurück zum Signal drehen",
  ),
  "width turned up": words(
    "an @ ist die Breite aufgedreht: Die Mitte ist dünn",
    "Breite aufgedreht",
    "an @ die Breite neutral stellen oder umgehen",
  ),
  "width at nothing": words(
    "an @ steht die Breite auf null: Beide Seiten sind gleich",
    "Breite auf null",
    "an @ die Breite neutral stellen oder umgehen",
  ),
  "left side subscribed twice": subscription(
    "@ nimmt die linke Seite der Strecke doppelt",
    "beide Seiten auf links gelegt",
  ),
  "right side subscribed twice": subscription(
    "@ nimmt die rechte Seite der Strecke doppelt",
    "beide Seiten auf rechts gelegt",
  ),
  "left side not subscribed": subscription(
    "@ nimmt die linke Seite der Strecke nicht",
    "linke Seite nicht belegt",
  ),
  "right side not subscribed": subscription(
    "@ nimmt die rechte Seite der Strecke nicht",
    "rechte Seite nicht belegt",
  ),
  "sides exchanged in the digital patch": subscription(
    "im digitalen Patch von @ sind links und rechts vertauscht",
    "links und rechts im Patch vertauscht",
  ),
  "nothing subscribed": subscription("@ nimmt nichts von der Strecke", "nichts belegt"),
  "left side 0.3 ms late": delayed("linke", "0,3 ms"),
  "left side 1 ms late": delayed("linke", "1 ms"),
  "right side 0.3 ms late": delayed("rechte", "0,3 ms"),
  "right side 1 ms late": delayed("rechte", "1 ms"),
  "only the left input fed": words(
    "an @ ist nur der linke Eingang belegt",
    "nichts im rechten Eingang",
    "die rechte Seite der Zuleitung in den rechten Eingang von @ stecken",
  ),
  "tuned to another channel": words(
    "@ steht auf einem anderen Kanal als der Sender",
    "die Kanalnummern sind verschieden",
    "leiser drehen, dann @ auf den Kanal des Senders stellen",
  ),
  "call profile in both ears": words(
    "@ ist im Telefonprofil: Mono und dumpf",
    "ein Anruf oder ein offenes Mikrofon auf dem Bildschirm",
    "schließen, was das Mikrofon von @ offen hält",
  ),
  "call profile in one ear": words(
    "@ ist im Telefonprofil, nur auf einem Ohr",
    "ein Anruf oder ein offenes Mikrofon auf dem Bildschirm",
    "schließen, was das Mikrofon von @ offen hält",
  ),
  "joined to another device": words(
    "@ ist mit einem anderen Gerät verbunden",
    "als anderswo verbunden angezeigt",
    "leiser drehen, dann @ mit der Quelle verbinden",
  ),
} satisfies Readonly<Partial<Record<(typeof settingNames)[number], FaultWords>>>;

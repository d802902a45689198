import type { FirstWords } from "#ui/words/use-words.ts";
import { starts } from "./starts.ts";

const trouble: FirstWords["trouble"] = {
  "no output":
    "Es gibt keinen Tonausgang mit zwei Seiten. Einen anstecken oder in den Einstellungen des Systems wählen, dann auf Abspielen drücken.",
  suspended:
    "Der Browser hält den Ton zurück. Noch einmal auf Abspielen drücken; bleibt es still, dieser Seite im Browser Ton erlauben.",
  lost: "Der Ausgang hat gewechselt oder ist weg, deshalb wurde der Ton angehalten. Erst leiser drehen, nachsehen, ob der richtige Ausgang gewählt ist, dann abspielen: Es beginnt leise.",
  hidden:
    "Die Seite war nicht zu sehen, deshalb wurde der Ton angehalten. Wieder da? Auf Abspielen drücken: Es beginnt leise.",
  "not loaded":
    "Der Teil, der den Ton macht, wurde nicht geladen. Die Verbindung prüfen und noch einmal abspielen; hilft das nicht, die Seite neu laden. Nichts geht verloren.",
  gone: "Der gewählte Ausgang ist weg, deshalb wurde der Ton angehalten. Wieder anstecken, oder unter Tonausgang einen anderen wählen.",
  "not that device":
    "Der Browser spielt nicht auf dem gewählten Ausgang. Unter Tonausgang noch einmal wählen, oder das System wählen lassen.",
  refused:
    "Dieser Ton hat die Prüfung nicht bestanden, die Ohren schützt, und wurde nicht gespielt. Die Seite neu laden; kommt es wieder, diese Kopie nicht benutzen.",
};

const notice: FirstWords["notice"] = {
  dropped:
    "Was von der letzten Sitzung aufgehoben war, war nicht zu verstehen und wurde weggelegt. Bitte neu beginnen.",
  mended:
    "Einiges von dem, was aufgehoben war, war nicht zu verstehen und wurde weggelassen. Alles Übrige der Sitzung ist da.",
  "not loaded":
    "Ein Teil des Programms wurde nicht geladen. Die Verbindung prüfen, dann die Seite neu laden. Nichts geht verloren.",
  "not worked out":
    "Dieser Aufbau ließ sich nicht durchrechnen; die letzte Änderung wurde zurückgenommen. Sonst ist nichts verloren.",
  "not kept":
    "Dieser Browser hebt hier nichts auf, wie in einem privaten Fenster. Die Sitzung geht weiter, aber ein Neuladen würde sie verlieren.",
  full: "Die Platte ist voll, die letzten Antworten sind nicht aufgehoben. Die Sitzung geht weiter, aber ein Neuladen würde sie verlieren. Platz schaffen: Mit der nächsten Antwort werden sie aufgehoben.",
  failed:
    "Der Browser konnte nicht auf die Platte schreiben, die letzten Antworten sind nicht aufgehoben. Die Sitzung geht weiter, aber ein Neuladen würde sie verlieren. Mit der nächsten Antwort wird es noch einmal versucht.",
  blocked:
    "Ein anderer Tab hält eine ältere Fassung dieses Programms, deshalb wird hier nichts aufgehoben. Den Tab schließen; mit der nächsten Antwort wird es noch einmal versucht.",
  newer:
    "Eine neuere Fassung dieses Programms war hier, und diese kann nichts mehr aufheben. Die Seite neu laden, bevor es weitergeht.",
  taken:
    "Ein anderer Tab hat inzwischen in diese Sitzung geschrieben. Hier ist, was er geschrieben hat; der letzte Druck gilt nicht, bitte noch einmal.",
  late: "Die Platte ist langsam: Die letzte Antwort ist noch nicht aufgehoben. Einen Augenblick warten, bevor die Seite zugeht.",
};

/** Names of the rigs that come with the program. */
const rigs: Readonly<Record<string, string>> = {
  "Tallow Hall story evening": "Erzähl\u00ADabend in Tallow Hall",
  "Tallow Hall, from the main pair": "Tallow Hall, aus der Summe gespeist",
  "Straight into the laptop": "Direkt in den Laptop",
  "Rig not known": "Aufbau nicht bekannt",
};

export const first: FirstWords = {
  direction: "ltr",
  trouble,
  starts,
  notice,
  silence: "Stille",
  escape: "Esc",
  back: "zurück",
  board: "Übersicht",
  whatIsThis: "was ist das?",
  soundOut: "Tonausgang",
  look: {
    title: "Aussehen und Sprache",
    themes: "Die Seite ist",
    theme: {
      "as the system": "wie das System",
      dark: "dunkel",
      light: "hell, bei Tageslicht",
      "red lamp": "rot, auf dunkler Bühne",
    },
    language: "Sie spricht",
  },
  own: {
    kept: "Alles liegt auf diesem Gerät: Es öffnet sich auch ohne Netz.",
    notKept: "Es liegt noch nicht auf diesem Gerät: Ohne Netz ginge es nicht auf.",
    install: "Auf diesem Gerät einrichten",
    byHand:
      "Um es unter den eigenen Programmen zu haben: im Menü des Browsers „Installieren“ oder „Zum Startbildschirm“ suchen.",
    newer: "Eine neuere Fassung ist da.",
    take: "Mit ihr neu beginnen",
  },
  follows: "Ein anderer Tab schreibt diese Sitzung; dieser zeigt, was er schreibt.",
  writeHere: "Hier schreiben",
  start: {
    rigName: (name) => rigs[name] ?? name.replace(/^Fed from: .*$/, "Aufbau nach Beschreibung"),
    lead: "Findet das Glied, das zwischen Pult und Ohren nicht stimmt: an dem, was die Ohren hören.",
    everyone: "Alle Kopfhörer prüfen",
    everyoneMore: "Was kommt Ihrem Aufbau am nächsten?",
    wrong: "Etwas klingt falsch",
    wrongMore: "Ein Ohr tot, keine Stimme, hohl, oder Brummen",
    prove: "Ein Kabel prüfen",
    proveMore: "Neu gelötet, geflickt, oder verdächtig",
    bench: "Ein Aufbau zum Üben, ohne Geräte",
    benchMore: "Etwas daran ist falsch. Gute Kopfhörer und zwei Minuten genügen.",
    number: "Nummer des Aufbaus",
    byChance: "zufällig",
    besides: "Außerdem",
    plan: "Wird es gehen, und mit welchem Kabel?",
    hear: "Hören, wie Fehler klingen",
    train: "Ohren üben: den Fehler nennen",
    measure: "Mit dem Interface messen",
    flex: "Ein Kabel biegen und zusehen",
    sounds: "Prüfsignale, zum Abspielen oder Mitnehmen",
    soundOut: "Wohin der Ton geht",
    goOn: "Weiter mit der letzten Sitzung",
    sessions: "Alle Sitzungen",
    noGear: "der Aufbau ohne Geräte",
    nothingHeard: "noch nichts gehört",
  },
};

import type { FirstWords } from "#ui/words/use-words.ts";

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
  "not loaded":
    "Ein Teil des Programms wurde nicht geladen. Die Verbindung prüfen, dann die Seite neu laden. Nichts geht verloren.",
  "not kept":
    "Dieser Browser hebt hier nichts auf: ein privates Fenster oder eine volle Platte. Die Sitzung geht weiter, aber ein Neuladen würde sie verlieren.",
};

/** Names of the rigs that come with the program. */
const rigs: Readonly<Record<string, string>> = {
  "Tallow Hall story evening": "Erzählabend in Tallow Hall",
  "Tallow Hall, from the main pair": "Tallow Hall, aus der Summe gespeist",
  "Straight into the laptop": "Direkt in den Laptop",
  "Rig not known": "Aufbau nicht bekannt",
};

export const first: FirstWords = {
  direction: "ltr",
  trouble,
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
    noGear: "der Aufbau ohne Geräte",
    nothingHeard: "noch nichts gehört",
  },
};

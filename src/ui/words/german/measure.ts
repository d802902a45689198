import type { Words } from "#ui/words/use-words.ts";

const quietly = "es beginnt leise";
const cannotRecord =
  "Dieser Browser gibt der Seite keinen Eingang. Einen anderen Browser nehmen, oder anderswo aufnehmen und die Datei bringen.";

export const measure: Words["measure"] = {
  where: {
    title: "Hier messen oder eine Aufnahme von anderswo?",
    label: "Wo",
    here: "hier: aus diesem Rechner, durch das Kabel und wieder hinein",
    hereNote: "jeder Aus- und Eingang mit zwei Seiten; am besten von einem Interface",
    cups: "Kopfhörer: eine Muschel nach der anderen ans Mikrofon",
    cupsNote: "das von Laptop oder Telefon genügt; Kopfhörer mit Kabel",
  },
  names: {
    inputs: "Darf die Seite die Namen der Eingänge sehen?",
    microphones: "Darf die Seite die Namen der Mikrofone sehen?",
    willAsk:
      "Der Browser nennt Ein- und Ausgänge nur einer Seite, die einen benutzen darf. Er fragt gleich und nennt dabei jeden Eingang Mikrofon; dieser wird sofort wieder geschlossen, aufgenommen wird nichts.",
    ask: "Nach den Namen fragen",
    again: "Noch einmal fragen",
    without: "weiter mit denen des Systems",
    refused: {
      "cannot record": cannotRecord,
      "not allowed":
        "Der Browser hat die Namen nicht freigegeben. In seinen Einstellungen für diese Seite das Mikrofon erlauben (so heißt dort jeder Eingang) und noch einmal fragen.",
      "no input":
        "Der Browser nennt keinen Eingang. Das Interface anstecken und noch einmal fragen.",
    },
  },
  ways: {
    lead: {
      title: "Aus welchem Ausgang, in welchen Eingang?",
      hint: "Am besten beide vom selben Interface: dann haben sie einen Takt.",
      back: "In welchen Eingang",
    },
    cups: {
      title: "Aus welchem Ausgang, und welches Mikrofon?",
      hint: "Der Ausgang, an dem die Kopfhörer stecken. Jedes Mikrofon genügt, an das beide Muscheln reichen.",
      back: "Welches Mikrofon",
    },
    out: "Aus welchem Ausgang",
    outLabel: "Ausgang",
    inLabel: "Eingang",
    goOn: "Weiter",
    systemIn: "wovon das System aufnimmt",
    fromTo: (out, input) => `Heraus: ${out}. Hinein: ${input}.`,
    heardBy: (out, input) => `Heraus: ${out}. Mikrofon: ${input}.`,
    others: "andere",
  },
  loadBox: {
    before: "vor den Eingängen steht eine Lastbox",
    why: "Wozu eine Lastbox",
    because:
      "Ein Interface, das sich selbst speist, hat die Massen schon verbunden: Ein Kabel ohne Schaft misst sich als heil. Darum gilt der Schaft als nicht geprüft, außer sein Strom hat keinen anderen Rückweg.",
    build:
      "Zum Bauen: zwei Widerstände, 33 Ω, 1 %. Einer von der Spitze des fernen Steckers, einer von seinem Ring, beide auf einen Punkt, und dieser Punkt nur an den Schaft des fernen Steckers. Jeden Widerstand misst ein symmetrischer Eingang: heiß an Spitze oder Ring, kalt an den gemeinsamen Punkt, die Masse des Eingangs bleibt frei.",
  },
  picture: {
    out: (channel) => `Out ${channel}`,
    in: (channel) => `In ${channel}`,
    plug: (number) => `Stecker ${number}`,
    each: "je 33 Ω",
    joined:
      "Links und rechts eines Ausgangs, durch das Kabel, zurück in links und rechts eines Eingangs",
    "load box":
      "Links und rechts eines Ausgangs, durch das Kabel, in eine Lastbox und von dort in zwei Eingänge",
  },
  cautions: {
    off: "Kopfhörer ab- und weglegen: Das ist für Messgeräte, niemand hört zu.",
    nothingElse:
      "Sonst nichts an diesem Ausgang: PA, Stream und Aufnahme weg davon. Phantomspeisung (48 V) aus.",
    monitoring:
      "Direct Monitoring am Interface aus, sonst speist der Eingang den Ausgang und es pfeift.",
    quietly:
      "Es beginnt leise. Der Eingang ist nur während der Messung offen, nur dann leuchtet sein Licht; aufgehoben wird nichts.",
  },
  level: {
    title: "Der Pegel wird gesucht",
    hint: "Hände weg vom Kabel. Es geht in langsamen Stufen hinauf, bis genug zurückkommt.",
    stop: "Anhalten",
    nothingBack: "Noch kommt nichts zurück.",
    input: (channel, level) => `In ${channel}: ${level}`,
    back: (inputs) => `Zurück kommt: ${inputs.join(", ")}.`,
    tooMuchBack: (inputs) =>
      `Zurück kommt: ${inputs.join(", ")}. Zu viel: Der Eingang übersteuert.`,
    tooMuch:
      "Schon das Leiseste ist zu viel für diesen Eingang: Er übersteuert. Gain am Eingang herunter, oder auf Line stellen, und noch einmal starten.",
    left: (seconds) => `noch ${seconds} s`,
  },
  trouble: {
    "no output":
      "Es gibt keinen Tonausgang mit zwei Seiten. Einen anstecken oder in den Einstellungen des Systems wählen, dann noch einmal starten.",
    suspended:
      "Der Browser hält den Ton zurück. Noch einmal starten; hilft das nicht, dieser Seite im Browser Ton erlauben.",
    lost: `Aus- oder Eingang hat gewechselt oder ist stehen geblieben, deshalb wurde angehalten. Nachsehen, ob die richtigen gewählt sind, dann noch einmal starten: ${quietly}.`,
    hidden: `Die Seite war nicht zu sehen, deshalb wurde angehalten. Wieder da? Noch einmal starten: ${quietly}.`,
    gone: "Der gewählte Aus- oder Eingang ist weg, deshalb wurde angehalten. Wieder anstecken oder einen anderen wählen.",
    "not that device":
      "Der Browser spielt nicht auf dem gewählten Ausgang. Noch einmal wählen, oder das System wählen lassen.",
    refused:
      "Dieser Ton hat die Prüfung nicht bestanden, die Ohren schützt, und wurde nicht gespielt. Die Seite neu laden; kommt es wieder, diese Kopie nicht benutzen.",
    "not loaded":
      "Der Teil, der spielt oder aufnimmt, wurde nicht geladen. Die Verbindung prüfen und noch einmal starten; hilft das nicht, die Seite neu laden. Nichts geht verloren.",
    "cannot record": cannotRecord,
    "not allowed":
      "Der Eingang wurde nicht erlaubt. In den Einstellungen des Browsers für diese Seite das Mikrofon erlauben (so heißt dort jeder Eingang), auch in denen des Systems, dann noch einmal starten.",
    "no input":
      "Der Browser findet keinen Eingang. Das Interface anstecken, dann noch einmal starten.",
    busy: "Ein anderes Programm hält den Eingang, oder er antwortet nicht. Dieses Programm schließen, dann noch einmal starten.",
    muted:
      "Der Eingang ist abgeschaltet: mit einer Taste, im System oder von einem anderen Programm. Einschalten, dann noch einmal starten.",
    changed: `Der Eingang hat andere Kanäle als eben noch. Nachsehen, wie er eingestellt ist, dann noch einmal starten: ${quietly}.`,
    "nothing came":
      "Der Eingang wurde geöffnet, aber es kam kein einziges Sample. Das Interface ab- und wieder anstecken, oder einen anderen Eingang wählen.",
  },
  processing: {
    echoCancellation: "Echounterdrückung",
    noiseSuppression: "Rauschunterdrückung",
    autoGainControl: "automatische Aussteuerung",
  },
  processed: (by) =>
    `Der Browser bearbeitet diesen Eingang, obwohl er es lassen sollte (${by.join(", ")}): So ist es keine Messung. Einen anderen Browser oder einen anderen Eingang nehmen.`,
  granted: {
    system: "Eingang des Systems",
    channels: (count) => (count === 1 ? "1 Kanal" : `${count} Kanäle`),
    madeOf: (rate, of) => `${rate}, umgerechnet aus ${of}`,
    line: (device, facts) => `${device}: ${facts.join(", ")}.`,
    unsaidLine: (device, facts) =>
      `${device}: ${facts.join(", ")}; ob er bearbeitet wird, sagt der Browser nicht.`,
  },
};

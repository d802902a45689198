import { answersIn, remediesIn } from "./german-noises-help.ts";
import { listed, type NoiseWords } from "./noise-words.ts";

const sound = {
  hiss: "das Rauschen",
  hum: "das Brummen",
  crackle: "das Knistern",
  distortion: "die Verzerrung",
} as const;

/** What is said of noises, in German. */
export const noiseWords: NoiseWords = {
  named: { hiss: "Rauschen", hum: "Brummen", crackle: "Knistern", distortion: "Verzerrung" },
  sounds: {
    hiss: "gleichmäßig, auch wenn nichts läuft",
    hum: "ein tiefer Ton oder ein Surren wie von einem Trafo",
    crackle: "Knacken und Kratzen, oder kurze Aussetzer",
    distortion: "rau oder zerrissen, vor allem wo es laut ist",
  },
  trials: {
    "programme stopped": () =>
      "Die Wiedergabe anhalten, Mikrofone stummschalten und in die Stille hören.",
    "knob down": (where, noise) =>
      noise === "distortion"
        ? `Den Regler von ${where} um etwa ein Drittel zurückdrehen, bis es deutlich leiser ist.`
        : `Den Regler von ${where} ganz zudrehen und hören.`,
    "knob to and fro": (where) =>
      `Erst leiser drehen. Den Regler von ${where} ein paarmal langsam hin- und herdrehen.`,
    "feed out": (where) =>
      `Erst leiser drehen. Das Kabel aus dem Eingang von ${where} ziehen, dann langsam wieder aufdrehen.`,
    "on battery": (where) => `Das Netzteil von ${where} abziehen, sodass der Akku speist.`,
    "one outlet": () =>
      "Alle Geräte auf diesem Weg aus einer Steckdosenleiste speisen. Jeder Schutzleiter bleibt, wie er ist.",
    "other leads out": () =>
      "Jedes Kabel dieser Geräte abziehen, das hier keinen Ton führt: USB, Netzwerk, Steuerung, Bildschirme. Tonkabel und Strom bleiben, wie sie sind.",
    "lead bent": (where) => `Erst leiser drehen. ${where} auf ganzer Länge biegen und bewegen.`,
    "plugs turned": (where) =>
      `Erst leiser drehen. Jeden Stecker von ${where} sacht in seiner Buchse drehen, nicht ziehen.`,
    "nearer the sender": (where) =>
      `Den Empfänger auf ein paar Schritte an ${where} heranbringen, nichts dazwischen.`,
    "quieter source": () =>
      "Die Quelle deutlich leiser drehen, dann den letzten Regler vor den Ohren langsam auf, bis es so laut ist wie vorher.",
    "other headphones": () =>
      "Erst leiser drehen. Einen Kopfhörer einstecken, der sicher gut ist, dann langsam wieder aufdrehen.",
    elsewhere: (where) => `Am Platz ${where} hören, oder dort fragen.`,
    recording: () =>
      "Eine Minute von dem aufnehmen, was läuft, oder die vorhandene Aufnahme nehmen, und auf anderem Gerät anhören.",
  },
  tried: {
    "programme stopped": () => "ohne Wiedergabe",
    "knob down": (where) => `Regler von ${where} zu`,
    "knob to and fro": (where) => `Regler von ${where} hin und her`,
    "feed out": (where) => `Kabel aus ${where} gezogen`,
    "on battery": (where) => `${where} am Akku`,
    "one outlet": () => "alles an einer Steckdosenleiste",
    "other leads out": () => "Kabel ohne Ton abgezogen",
    "lead bent": (where) => `${where} gebogen`,
    "plugs turned": (where) => `Stecker von ${where} gedreht`,
    "nearer the sender": (where) => `Empfänger nahe an ${where}`,
    "quieter source": () => "Quelle leiser, letzter Regler lauter",
    "other headphones": () => "mit anderem Kopfhörer",
    elsewhere: (where) => `gehört am Platz ${where}`,
    recording: () => "auf der Aufnahme",
  },
  becomes: {
    hiss: "Was wird aus dem Rauschen?",
    hum: "Was wird aus dem Brummen?",
    crackle: "Was wird aus dem Knistern?",
    distortion: "Was wird aus der Verzerrung?",
  },
  withHand: {
    hiss: "Ändert sich das Rauschen dabei?",
    hum: "Ändert sich das Brummen dabei?",
    crackle: "Knistert es dabei?",
    distortion: "Ändert sich die Verzerrung dabei?",
  },
  thereToo: {
    hiss: "Ist das Rauschen auch dort?",
    hum: "Ist das Brummen auch dort?",
    crackle: "Ist das Knistern auch dort?",
    distortion: "Ist die Verzerrung auch dort?",
  },
  answers: answersIn,
  causes: {
    "in the programme": (_, noise) => `${sound[noise]} steckt im Programm, vor allem anderen hier`,
    "before the knob": (where, noise) =>
      `${sound[noise]} kommt bei ${where} vor dem Regler hinein: Es wird mit dem Programm lauter`,
    "behind the knob": (where, noise) =>
      `${sound[noise]} kommt von ${where} selbst, hinter dem Regler: Kein Regler dort macht es leiser`,
    "behind the last knob": (where, noise) =>
      `${sound[noise]} kommt von ${where} selbst, hinter dem Regler, dem letzten vor den Ohren`,
    "the box itself": (where, noise) => `${sound[noise]} kommt von ${where} selbst`,
    "radio link": (where, noise) => `${sound[noise]} kommt über Funk hinein, hinter ${where}`,
    "ground loop": (where) => `eine Brummschleife, geschlossen durch das Kabel in ${where}`,
    "loop by another lead": (where) =>
      `eine Brummschleife über ein anderes als ein Tonkabel, geschlossen durch das Kabel in ${where}`,
    "lead picks it up": (where) => `${where} fängt Netzbrummen ein`,
    "return lost": (where) => `die Masse fehlt oder ist schlecht in ${where}`,
    "power supply": (where) => `das Netzteil von ${where} brummt`,
    "knob dirty": (where) => `der Regler von ${where} ist verschmutzt oder abgenutzt`,
    "plugs not clean": (where) => `ein Stecker von ${where} oder seine Buchse ist nicht sauber`,
    "lead breaking": (where) => `eine Ader bricht in ${where}`,
    "cord breaking": (where) => `eine Ader bricht in der Zuleitung von ${where}`,
    "source stutters": (where) => `${where} kommt nicht nach: Der Ton reißt dort ab`,
    "input overloaded": (where) => `der Eingang von ${where} ist übersteuert`,
    "output at its end": (where) => `${where} gibt alles her: Die Spitzen werden abgeschnitten`,
    "driver torn": (where) => `ein Wandler von ${where} ist gerissen oder abgenutzt`,
    "something else": () => "etwas, das nicht auf der Liste steht",
  },
  ...remediesIn,
  alsoByEar: (faults) =>
    `Kann es auch mitbringen, und die Prüfungen nach Gehör finden es: ${faults.join("; ")}.`,
  unasked: (named) => listed(named, "und"),
  askedOnlyAt: (named, seats) => `${named}, außer bei: ${seats}`,
  tells: (bits, seconds) => `Es sagt ${bits} Bit in etwa ${seconds} s.`,
};

import type { Words } from "#ui/words/use-words.ts";

export const round: Words["round"] = {
  answering: "Wer antwortet",
  wearing: "Ich trage sie selbst",
  facing: "sie zeigen, ich stehe ihnen gegenüber",
  behind: "sie zeigen, ich stehe hinter ihnen",
  cameFrom: (name) => `${name}: in Ordnung`,
  lookAgain: "noch einmal ansehen",
  otherwise: "Nicht jetzt, nicht hier, nicht in Stereo",
  skip: (next) => `Überspringen, weiter zu ${next}`,
  absent: "Hier ist niemand",
  back: "Es ist wieder jemand hier",
  absentNow: "Hier ist niemand",
  absentMore: "Hierher wird niemand geschickt, und auf dem Blatt steht: nicht geprüft.",
  wants: "Gewünscht ist hier",
  stereo: "stereo",
  stereoAfterAll: "nein, Stereo",
  feeds: {
    mono: "mono",
    "left ear": "alles auf dem linken Ohr",
    "right ear": "alles auf dem rechten Ohr",
  },
  wantedSo: {
    mono: "Hier ist Mono gewünscht: Beide Ohren bekommen beide Seiten.",
    "left ear": "Hier ist alles auf dem linken Ohr gewünscht.",
    "right ear": "Hier ist alles auf dem rechten Ohr gewünscht.",
  },
};

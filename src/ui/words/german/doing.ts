import type { Words } from "#ui/words/use-words.ts";

export const doing: Words["doing"] = {
  muted: "Jetzt stumm, für Hände an den Geräten.",
  lookFor: (seen) => `Achten auf: ${seen.join("; ")}.`,
  asItWas: "Dann ist alles wie vorher.",
  mayCure: "Das behebt es vielleicht.",
  seeWhat: "Um zu sehen, was sich ändert: Die nächste Antwort sagt es.",
  leaveAside: "Lassen, wie es ist",
  notPossible: "Geht hier nicht",
  comesBack: "Der Ton kommt 20 dB leiser zurück.",
  done: "Erledigt, noch einmal prüfen",
  otherOperator: "Jetzt schreibt jemand anders mit, noch einmal prüfen",
  otherListener: "Jetzt hört jemand anders, noch einmal prüfen",
  curtain: "Vorhang auf",
  didElse: "Etwas anderes wurde gemacht",
  toWhat: "Woran wurde es gemacht?",
  somethingElse: "es war etwas anderes",
  takeBack: "letzte Antwort zurücknehmen",
};

import { counted } from "#core/report/phrases.ts";
import type { Words } from "#ui/words/use-words.ts";

export const numbers: Words["numbers"] = {
  open: "Zahlen",
  title: "In Zahlen",
  beliefs: "Vermutet",
  trouble: "hier ist etwas Hörbares falsch",
  more: (alike) =>
    `und ${counted(alike, "weiterer, der genauso antwortet", "weitere, die genauso antworten")}`,
  others: (count, most) => `${counted(count, "weiterer", "weitere")}, keiner über ${most}`,
  ears: "An den Ohren bei 1 kHz, bezogen auf die Quelle",
  sound: "wenn nichts falsch ist",
  under: (fault) => `falls: ${fault}`,
  ear: "Ohr",
  ofLeft: "von links",
  ofRight: "von rechts",
  left: "links",
  right: "rechts",
  nothing: "nichts",
  checks: "Was jede Prüfung verraten würde",
  check: "Prüfung",
  bits: "Bit",
  seconds: "Sekunden",
  perMinute: "Bit je Minute",
  less: (count, bits) => `${counted(count, "weitere", "weitere")}, weniger als ${bits} Bit`,
  steps: "Erwartete Sekunden bis zum fehlerfreien Aufbau, beginnend mit",
};

import type { Words } from "#ui/words/use-words.ts";
import { sound } from "./terms-sound.ts";
import { wires } from "./terms-wires.ts";

export const trade: Words["trade"] = {
  title: "Fachwörter",
  find: "Ein Wort suchen",
  none: "Kein Fachwort hier enthält das.",
  letters: "Zu einem Buchstaben",
  source: (standard) => `nach ${standard}`,
  practice: "Wo keine Norm genannt ist, ist es gängige Praxis.",
  terms: { ...wires, ...sound },
};

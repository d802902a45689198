import type { Words } from "#ui/words/use-words.ts";
import { sound } from "./terms-sound.ts";
import { wires } from "./terms-wires.ts";

export const trade: Words["trade"] = {
  title: "Die Wörter des Fachs",
  find: "Ein Wort finden",
  none: "Hier hat kein Wort das in sich.",
  letters: "Zu einem Buchstaben",
  source: (standard) => `wie in ${standard}`,
  practice: "Wo keine Norm genannt ist, ist es allgemeiner Brauch.",
  terms: { ...wires, ...sound },
};

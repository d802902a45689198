import { endName, socketName } from "#core/words/german-names.ts";
import type { Words } from "#ui/words/use-words.ts";

export const marks: Words["marks"] = {
  socket: socketName,
  plug: endName,
  contact: endName,
  and: (names) => names.join(" und "),
};

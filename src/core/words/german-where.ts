import { plugWords, quoted, shownName, spotWords } from "./german-names.ts";
import type { Language } from "./language.ts";

/** Where a fault sits: a name in quotation marks, which wants no article. */
export const where: Language["where"] = ({ part, at, into, plug, socket }) => {
  if (part.endsWith(": listener")) return part.replace(/: listener$/, "");
  if (part === "operator") return "wer mitschreibt";
  if (part === "client") return "das Signal";
  const named = `»${shownName(part)}«`;
  if (into === undefined)
    return at === "settings" || at === "body" ? named : `${named} ${spotWords(at)}`;
  const which = plug === undefined ? "Stecker" : plugWords(plug);
  return socket === undefined
    ? `${which} von ${named} an ${quoted(into)}`
    : `${which} von ${named} (in der Buchse »${socket}« an ${quoted(into)})`;
};

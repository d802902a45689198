import { withThe } from "./english-names.ts";
import type { Language } from "./language.ts";

/** Where a fault sits. */
export const where: Language["where"] = ({ part, at, into, plug, socket }) => {
  if (part.endsWith(": listener")) return part.replace(/: listener$/, "");
  if (part === "operator") return "whoever writes the answers down";
  if (part === "client") return "the feed";
  const named = withThe(part);
  if (into === undefined) return at === "settings" || at === "body" ? named : `${named}, ${at}`;
  const which = plug === undefined ? "the plug" : `the ${plug} plug`;
  // It stands within sentences and by itself, on tape: so no comma that a sentence would have to close.
  return socket === undefined
    ? `${which} of ${named} at ${withThe(into)}`
    : `${which} of ${named} (in the socket marked ${socket} at ${withThe(into)})`;
};

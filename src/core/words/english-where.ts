import type { Language } from "./language.ts";

/** Where a fault sits. */
export const where: Language["where"] = ({ part, at, into, plug, socket }) => {
  if (part.endsWith(": listener")) return part.replace(/: listener$/, "");
  if (part === "operator") return "whoever writes the answers down";
  const named = part.startsWith("headphones") ? part : `the ${part}`;
  if (at.startsWith("output")) return `${named}, ${at}`;
  if (into === undefined) return named;
  const which = plug === undefined ? "the plug" : `the ${plug} plug`;
  return socket === undefined
    ? `${which} of ${named} at the ${into}`
    : `${which} of ${named}, in the socket marked ${socket} at the ${into},`;
};

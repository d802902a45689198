import type { Language } from "./language.ts";

/** Where a fault sits. */
export const where: Language["where"] = (part, at, into) => {
  if (part.endsWith(": listener")) return part.replace(/: listener$/, "");
  if (part === "operator") return "whoever writes the answers down";
  const named = part.startsWith("headphones") ? part : `the ${part}`;
  if (at.startsWith("output")) return `${named}, ${at}`;
  if (into !== undefined) return `the plug of ${named} at the ${into}`;
  return named;
};

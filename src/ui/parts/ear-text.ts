import type { Shown } from "./content.ts";

const sides = { left: "left", right: "right", both: "left + right", nothing: "nothing" } as const;

/** What a contact or an ear gets, as briefly as a drawing needs it. */
export function brief({ carries, inverted, difference }: Shown): string {
  if (difference) return inverted ? "right − left" : "left − right";
  if (!inverted) return sides[carries];
  return carries === "both" ? "−(left + right)" : `−${sides[carries]}`;
}

/** The same as it is said. */
export function said(shown: Shown): string {
  if (shown.difference) return brief(shown).replace("−", "minus");
  const what = sides[shown.carries].replace("+", "and");
  return shown.inverted ? `${what}, upside down` : what;
}

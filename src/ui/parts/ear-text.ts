import type { Words } from "#ui/words/use-words.ts";
import type { Shown } from "./content.ts";

/** What a contact or an ear gets, as briefly as a drawing needs it. */
export const brief = ({ plan }: Words, shown: Shown): string => plan.gets.brief[keyOf(shown)];

/** The same as it is said. */
export const said = ({ plan }: Words, shown: Shown): string => plan.gets.said[keyOf(shown)];

function keyOf({ carries, inverted, difference }: Shown): keyof Words["plan"]["gets"]["said"] {
  const what = difference ? "difference" : carries;
  return inverted && what !== "nothing" ? `${what}, inverted` : what;
}

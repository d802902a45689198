import type { returnTold } from "#core/proving/return-told.ts";
import type { Ohms } from "#core/units/units.ts";
import type { Words } from "#ui/words/use-words.ts";

/** What a load box says of the return, in words. */
export function returnWords(
  { figures, prove: { result } }: Words,
  told: ReturnType<typeof returnTold>,
): string {
  if (told === undefined) return "";
  if (told === "open") return result.returnOpen;
  const figure = (ohms: Ohms): string => `${figures.fixed(ohms, ohms < 10 ? 2 : 0)} Ω`;
  const { ohms, error } = told;
  const give = Math.max(2 * error, 0.05);
  return ohms <= give
    ? result.returnGood(figure(give))
    : result.returnMore(figure(ohms), figure(give));
}

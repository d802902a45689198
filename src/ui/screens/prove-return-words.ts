import type { returnTold } from "#core/proving/return-told.ts";
import type { Ohms } from "#core/units/units.ts";

const figure = (ohms: Ohms): string => (ohms < 10 ? ohms.toFixed(2) : ohms.toFixed(0));

/** What a load box says of the return, in words. */
export function returnWords(told: ReturnType<typeof returnTold>): string {
  if (told === undefined) return "";
  if (told === "open") return "The return reads as open.";
  const { ohms, error } = told;
  const give = `give or take ${figure(Math.max(2 * error, 0.05))} Ω`;
  return ohms <= Math.max(2 * error, 0.05)
    ? `The return reads as it should be, ${give}.`
    : `The return reads ${figure(ohms)} Ω more than it should have, ${give}.`;
}

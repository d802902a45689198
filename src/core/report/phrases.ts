import type { Probability, Seconds } from "#core/units/units.ts";
import type { Language } from "#core/words/language.ts";
import { surenessOf } from "#core/words/sureness.ts";

/** A sentence, from one without its capital and full stop. */
export const sentence = (text: string): string => `${capital(text)}.`;

/** Begun as a sentence is. The rest keeps its letters: a small Ω is another letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A probability as people say it: so many in a hundred, never none and never all. */
export const inHundred = ({ phrases }: Language, probability: Probability): string =>
  probability < 0.01
    ? phrases.underOne
    : phrases.inHundred(Math.min(99, Math.round(probability * 100)));

/** How sure, in words. */
export const howSure = ({ phrases }: Language, probability: Probability): string =>
  phrases.sure[surenessOf(probability)];

/** How many, with the word for one or for more of them. */
export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** How long something is expected to take, as people say it: up to the next half minute. */
export function minutes({ phrases }: Language, seconds: Seconds): string {
  if (seconds < 60) return phrases.underAMinute;
  const halves = Math.ceil(seconds / 30);
  return phrases.minutes(`${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""}`);
}

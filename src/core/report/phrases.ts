import type { Probability, Seconds } from "#core/units/units.ts";

/** A sentence, from one without its capital and full stop. */
export const sentence = (text: string): string => `${capital(text)}.`;

/** Begun as a sentence is. The rest keeps its letters: a small Ω is another letter. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A probability as people say it: so many in a hundred, never none and never all. */
export function inHundred(probability: Probability): string {
  if (probability < 0.01) return "less than 1 in 100";
  return `${Math.min(99, Math.round(probability * 100))} in 100`;
}

/** How sure, in words. */
export function howSure(probability: Probability): string {
  if (probability >= 0.99) return "almost certain";
  if (probability >= 0.95) return "very likely";
  if (probability >= 0.75) return "likely";
  if (probability >= 0.5) return "more likely than not";
  return "possible";
}

/** 'One', 'two' and so on for small counts. */
export const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** How long something is expected to take, as people say it: up to the next half minute. */
export function minutes(seconds: Seconds): string {
  if (seconds < 60) return "less than a minute";
  const halves = Math.ceil(seconds / 30);
  return `about ${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""} min`;
}

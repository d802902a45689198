import type { Granted } from "#audio/granted.ts";
import type { Found, MeasurerTrouble } from "#audio/measurer.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Words } from "#ui/words/use-words.ts";

/** What the browser does to the sound although it was asked not to; undefined where it leaves it alone. */
export const processedWords = ({ measure }: Words, { processed }: Granted): string | undefined =>
  processed.length === 0
    ? undefined
    : measure.processed(processed.map((one) => measure.processing[one]));

/** Which input it was, and what the browser gave: one line. */
export function grantedWords(
  { figures, measure }: Words,
  { device, channels, rate, inputRate, unsaid }: Granted,
): string {
  const words = measure.granted;
  const hertz = (one: Hertz): string => `${figures.plain(one / 1000)} kHz`;
  const facts = [
    ...(channels === undefined ? [] : [words.channels(channels)]),
    inputRate === undefined || inputRate === rate
      ? hertz(rate)
      : words.madeOf(hertz(rate), hertz(inputRate)),
  ];
  return (unsaid.length === 0 ? words.line : words.unsaidLine)(device.name || words.system, facts);
}

/** Why the last start led to nothing: some trouble, or an input that is cut off at any level; undefined where it was only stopped. */
export function whyBefore(
  { measure }: Words,
  trouble: MeasurerTrouble | undefined,
  found: Found | undefined,
): string | undefined {
  if (trouble) return measure.trouble[trouble];
  return found?.ended === "found" && found.found === "clipped" ? measure.level.tooMuch : undefined;
}

import { type AnyName, everyName, everything } from "#core/signals/everything.ts";
import { instrumentNames } from "#core/signals/instruments.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Language } from "#core/words/language.ts";

/** The name of a signal's file. */
export const fileName = (name: AnyName): string =>
  instrumentNames.some((one) => one === name) ? `instruments-${name}.wav` : `${name}.wav`;

/** One signal: its file, what it is, what to hear, and what is known of it beforehand. */
function entryOf({ sheet, signals }: Language, name: AnyName, rate: Hertz): string {
  const { duration, level, peak, loop } = everything[name];
  const { what, hear } = signals[name];
  const round = loop?.(rate);
  const facts = sheet.facts(duration, sheet.level(level), sheet.level(peak));
  const again = round ? ` ${sheet.loop(Math.round(round.from), Math.round(round.to))}` : "";
  return [fileName(name), `  ${what}.`, `  ${sheet.toHear(hear)}`, `  ${facts}${again}`].join("\n");
}

/** The sheet that goes with the files. */
export const sheet = (language: Language, rate: Hertz): string =>
  [
    language.sheet.title(rate),
    "",
    ...language.sheet.cautions.map((one) => `- ${one}`),
    "",
    language.sheet.levels,
    "",
    ...everyName.map((name) => `${entryOf(language, name, rate)}\n`),
  ].join("\n");

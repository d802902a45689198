import { causeWords } from "#core/report/noise-words.ts";
import type { SheetKnob } from "#core/report/sheet-levels.ts";
import type { HuntedNoise } from "#core/report/sheet-noises.ts";
import type { SheetSeat } from "#core/report/sheet-seats.ts";
import { movedText } from "#core/words/move-text.ts";
import { type SheetSayer, surelySaid } from "./sheet-words.ts";

/** Where knobs stand, as the screen of levels has it: of ten. */
export const knobsSaid = (
  { words: { sheet, figures, language } }: SheetSayer,
  knobs: readonly SheetKnob[],
): string =>
  knobs
    .map(({ part, socket, up }) => {
      const { names } = language;
      return sheet.knobAt(names.socket(part, socket), figures.fixed(10 * up, 1));
    })
    .join("; ");

const isSame = (one: SheetKnob, other: SheetKnob): boolean =>
  one.part === other.part && one.socket === other.socket;

/** Knobs on the way to every position of several. */
export function sharedKnobs(seats: readonly SheetSeat[]): readonly SheetKnob[] {
  const [first, ...others] = seats;
  if (first === undefined || others.length === 0) return [];
  return first.knobs.filter((knob) =>
    others.every(({ knobs }) => knobs.some((one) => isSame(one, knob))),
  );
}

/** Where the knobs of a position stand, but for those that were said of all. */
export const ownKnobsSaid = (
  sayer: SheetSayer,
  { knobs }: SheetSeat,
  shared: readonly SheetKnob[],
): string =>
  knobsSaid(
    sayer,
    knobs.filter((knob) => !shared.some((one) => isSame(one, knob))),
  );

/** How loud it should be at the ears, and between what that may lie. */
export function earSaid({ words: { sheet, figures } }: SheetSayer, { ear }: SheetSeat): string {
  if (ear === undefined) return "–";
  const [level = "", low = "", high = ""] = [ear.value, ear.low, ear.high].map((one) =>
    figures.fixed(Math.max(0, one), 0),
  );
  return sheet.ear(level, low, high);
}

/** A noise by its name. */
export const noiseNamed = ({ words }: SheetSayer, { noise }: HuntedNoise): string =>
  words.language.noises.named[noise];

/** Where a noise comes in and how sure that is, or that nobody looked. */
export function noiseSaid(sayer: SheetSayer, { from, noise }: HuntedNoise): string {
  const { sheet, language } = sayer.words;
  if (from === undefined) return sheet.complainedOf;
  const cause = causeWords(language, sayer.rig, from.cause, noise);
  return `${from.sure ? cause : sheet.unsure(cause)} (${surelySaid(sayer, from)})`;
}

/** What a hand did on the way since; nothing of what was noticed holds after that. */
export function sinceSaid(
  { words: { sheet, language }, rig }: SheetSayer,
  { since, again }: HuntedNoise,
): string {
  if (since.length === 0) return "";
  const moves = since.map((move) => movedText(language, rig, move)).join("; ");
  return again ? sheet.sinceAgain(moves) : sheet.since(moves);
}

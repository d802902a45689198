import type { Cup } from "#core/measurement/cup.ts";
import type { CupsTold } from "#core/measurement/cups-told.ts";
import type { Estimate } from "#core/measurement/return.ts";
import type { Words } from "#ui/words/use-words.ts";

/** Where a cup is held moves it by so much. */
const byHand = 3;
/** A cup so far below the other may be dead: what is heard is what leaks from the other one. */
const leaks = 20;
/** Apart by less than this is not apart. */
const alike = 0.05;

/** What both cups are, as one would say it. */
export function cupsTitle(
  { cups: { heads } }: Words,
  { cups: [left, right], polarity }: CupsTold,
): string {
  const [one, other] = [left.carries, right.carries];
  const own = { "1": heads.ownAlike, "-1": heads.ownOpposite } as const;
  const titles: Readonly<Record<string, string>> = {
    "neither neither": heads.neither,
    "left right": polarity === undefined ? heads.own : own[`${polarity}`],
    "right left": heads.exchanged,
    "both both": heads.mono,
    "left left": heads.bothLeft,
    "right right": heads.bothRight,
  };
  if (one !== other && one === "neither") return heads.dead(0);
  if (one !== other && other === "neither") return heads.dead(1);
  return titles[`${one} ${other}`] ?? heads.each(one, other);
}

/** All that was heard, a line each. */
export const cupsLines = (words: Words, told: CupsTold): readonly string[] => [
  ...told.cups.map((cup, at) => carriesLine(words, cup, at === 0 ? 0 : 1)),
  ...apartLines(words, told),
  ...polarityLines(words, told),
  ...buzzLines(words, told),
];

function carriesLine({ cups: { gives } }: Words, { carries, sign }: Cup, side: 0 | 1): string {
  if (carries === "neither") return gives.nothing(side);
  if (carries !== "both") return gives.one(side, carries);
  if (sign === undefined) return gives.both(side);
  return sign === 1 ? gives.sum(side) : gives.difference(side);
}

function apartLines({ cups, figures }: Words, { apart }: CupsTold): readonly string[] {
  if (apart === undefined) return [];
  const by = Math.abs(apart);
  const { alike: even, byHand: held, softer, leaks: leaking } = cups.apart;
  if (by < alike) return [even];
  const side = apart < 0 ? 1 : 0;
  if (by > leaks) return [leaking(side, figures.decibels(by))];
  return [(by < byHand ? held : softer)(side, figures.decibels(by))];
}

function polarityLines({ cups }: Words, { apart, polarity }: CupsTold): readonly string[] {
  if (apart === undefined) return [];
  if (polarity === undefined) return [cups.polarity.unknown];
  return [polarity === 1 ? cups.polarity.alike : cups.polarity.opposite];
}

function buzzLines(words: Words, { distortion, buzzing }: CupsTold): readonly string[] {
  const { buzz } = words.cups;
  const [left, right] = distortion;
  const each = [left, right].flatMap((one, at) =>
    one ? [buzz.in(percent(words, one), at === 0 ? 0 : 1)] : [],
  );
  if (each.length === 0) return [];
  return [buzzing === undefined ? buzz.none(each) : buzz.one(buzzing, each)];
}

function percent({ figures, returning }: Words, { value, error }: Estimate): string {
  const { under, percent: said } = returning.beside;
  const bound = Math.max(0.001, 3 * error);
  const fine = (part: number) => figures.fixed(100 * part, part < 0.01 ? 2 : 1);
  return value < bound ? under(fine(bound)) : said(fine(value));
}

/** What ears are asked of cups. */
const asked = ["left", "right", "pair"] as const;

/** What the microphone could not tell of what ears are asked. */
export function leftToEars(
  { cups }: Words,
  answered: readonly { readonly asked: { readonly check: string } }[],
): string | undefined {
  const open = asked.filter((check) => answered.every((one) => one.asked.check !== check));
  return open.length === 0 ? undefined : cups.result.notSettled(open);
}

import type { Cup } from "#core/measurement/cup.ts";
import type { CupsTold } from "#core/measurement/cups-told.ts";
import type { Estimate } from "#core/measurement/return.ts";
import { decibels } from "./numbers.ts";

const sides = ["left", "right"] as const;
const gives = { left: "the left", right: "the right", both: "both", neither: "nothing" } as const;

/** Where a cup is held moves it by so much. */
const byHand = 3;
/** A cup so far below the other may be dead: what is heard is what leaks from the other one. */
const leaks = 20;
/** Apart by less than this is not apart. */
const alike = 0.05;

/** What both cups are, as one would say it. */
export function cupsTitle({ cups: [left, right], polarity }: CupsTold): string {
  const [one, other] = [left.carries, right.carries];
  const titles: Readonly<Record<string, string>> = {
    "neither neither": "Neither cup is heard",
    "left right": own(polarity),
    "right left": "The sides are exchanged",
    "both both": "Both cups give left and right together",
    "left left": "Both cups give the left",
    "right right": "Both cups give the right",
  };
  if (one !== other && one === "neither") return "The left cup gives nothing";
  if (one !== other && other === "neither") return "The right cup gives nothing";
  return (
    titles[`${one} ${other}`] ?? `The left cup gives ${gives[one]}, the right one ${gives[other]}`
  );
}

function own(polarity: CupsTold["polarity"]): string {
  if (polarity === undefined) return "Each side is in its own cup";
  return polarity === 1
    ? "Each side is in its own cup, both the same way"
    : "Each side is in its own cup, one of them upside down";
}

/** All that was heard, a line each. */
export const cupsLines = (told: CupsTold): readonly string[] => [
  ...told.cups.map((cup, at) => carriesLine(cup, sides[at] ?? "left")),
  ...apartLines(told),
  ...polarityLines(told),
  ...buzzLines(told),
];

function carriesLine({ carries, sign }: Cup, side: string): string {
  const cup = `The ${side} cup gives`;
  if (carries === "neither") return `${cup} nothing: it is dead, or was not at the microphone.`;
  if (carries !== "both") return `${cup} ${gives[carries]}.`;
  if (sign === undefined) return `${cup} left and right; how they add up cannot be told.`;
  return sign === 1 ? `${cup} left plus right.` : `${cup} left minus right.`;
}

function apartLines({ apart }: CupsTold): readonly string[] {
  if (apart === undefined) return [];
  const by = decibels(Math.abs(apart));
  if (Math.abs(apart) < alike) return ["Both cups are equally loud."];
  const softer = apart < 0 ? "right" : "left";
  const line = `The ${softer} cup is ${by} softer than the other one`;
  if (Math.abs(apart) > leaks)
    return [`${line}: it may be dead, and what is heard is what leaks from the other.`];
  return Math.abs(apart) < byHand ? [`${line}; how it is held makes as much.`] : [`${line}.`];
}

function polarityLines({ apart, polarity }: CupsTold): readonly string[] {
  if (apart === undefined) return [];
  if (polarity === undefined)
    return ["Whether they push the same way cannot be told: hold both alike, closer, and again."];
  const unknown = "A microphone's own polarity is unknown: only whether both are alike.";
  return [`${polarity === 1 ? "They push the same way." : "They push opposite ways."} ${unknown}`];
}

function buzzLines({ distortion, buzzing }: CupsTold): readonly string[] {
  const [left, right] = distortion;
  const numbers = [left, right].flatMap((one, at) =>
    one ? [`${percent(one)} in the ${sides[at]} cup`] : [],
  );
  if (numbers.length === 0) return [];
  const start =
    buzzing === undefined
      ? "Distortion (a buzz, a rattle)"
      : `The ${sides[buzzing]} cup buzzes or rattles. Distortion`;
  return [`${start}: ${numbers.join(", ")}.`];
}

function percent({ value, error }: Estimate): string {
  const bound = Math.max(0.001, 3 * error);
  const fine = (part: number) => (100 * part).toFixed(part < 0.01 ? 2 : 1);
  return value < bound ? `under ${fine(bound)} %` : `${fine(value)} %`;
}

const checkWords: Readonly<Record<string, string>> = {
  left: "the left",
  right: "the right",
  pair: "the two bursts",
};

/** What the microphone could not tell of what ears are asked. */
export function leftToEars(answered: readonly { readonly asked: { readonly check: string } }[]) {
  const open = Object.entries(checkWords).filter(([check]) =>
    answered.every(({ asked }) => asked.check !== check),
  );
  if (open.length === 0) return undefined;
  return `Not settled by the microphone, and asked of ears afterwards: ${open.map(([, words]) => words).join(", ")}.`;
}

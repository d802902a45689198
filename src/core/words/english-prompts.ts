import { type onesBefore, type PromptWord, small, tens } from "#core/prompts/words.ts";

/** In English a number is said and written as it is called. */
const asCalled = <Word extends string>(words: readonly Word[]) =>
  Object.fromEntries(words.map((word) => [word, word])) as { readonly [Each in Word]: Each };

/** What is spoken into the ears, and shown for it. The files of `public/prompts/en` are made of this: `npm run prompts`. */
export const prompts: Readonly<Record<Exclude<PromptWord, (typeof onesBefore)[number]>, string>> = {
  left: "left",
  right: "right",
  middle: "middle",
  "point-to-the-side": "point to the side you hear",
  "point-to-where": "point to where you hear it",
  "raise-if-nothing": "raise your hand if you hear nothing",
  "volume-down": "volume down now",
  "thank-you": "thank you",
  "take-them-off": "take them off",
  listen: "listen",
  "once-more": "once more",
  position: "position",
  output: "output",
  and: "and",
  ...asCalled(small),
  ...asCalled(tens),
};

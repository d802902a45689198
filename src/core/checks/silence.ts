import type { EarCheck } from "./check.ts";

/** Nothing is played. Somebody who hears something all the same hears another source, or guesses. */
export const silence: EarCheck = {
  name: "silence",
  signal: "silence",
  questions: [
    {
      name: "anything?",
      answers: ["nothing", "something"],
      predict: ({ unlisted }) => Float64Array.from(unlisted ? [0.5, 0.5] : [1, 0]),
    },
  ],
  seconds: 6,
  required: false,
};

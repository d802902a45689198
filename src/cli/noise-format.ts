import { z } from "zod";
import {
  answersTo,
  noises,
  type TrialName,
  trialsAlone,
  trialsAtKnob,
  trialsAtPart,
} from "#core/checks/noise.ts";
import { text } from "./rig-format.ts";

const part = text("The id of a part.");

/** What is tried against a noise: the same as the core's `Trial`, as a format. */
export const trialFormat = z
  .discriminatedUnion("try", [
    z.object({ try: z.enum(trialsAlone).describe("What needs no part to be named.") }),
    z.object({ try: z.enum(trialsAtPart).describe("What is done to a part."), part }),
    z.object({
      try: z.enum(trialsAtKnob).describe("What is done to the knob of an output."),
      part,
      socket: text("Which of its outputs."),
    }),
    z.object({
      try: z.literal("elsewhere").describe("Somebody listens at another position."),
      position: text("The id of that position."),
    }),
  ])
  .meta({ id: "Trial", description: "What is tried to learn where a noise comes in." });

const names: readonly TrialName[] = [...trialsAlone, ...trialsAtPart, ...trialsAtKnob, "elsewhere"];

/** What each trial may be answered with. */
const lists = names.map((name) => `${name}: ${answersTo(name).join(" | ")}`).join("; ");

/** What became of a noise: the same as the core's `Noticed`, as a format. */
export const noticedFormat = z.object({
  asked: z
    .object({
      check: z.literal("noise").describe("A noise that nobody sent, while something is tried."),
      position: text("The id of a position."),
      noise: z.enum(noises).describe("What is heard."),
      trial: trialFormat,
    })
    .describe("What was tried."),
  results: z
    .array(z.array(z.string()))
    .describe(
      `One list: the answers it may have been, all for 'can't tell', none where it cannot be tried here. ${lists}`,
    ),
});

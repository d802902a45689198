import { z } from "zod";
import { noises } from "#core/checks/noise.ts";
import { probability, seconds } from "./amounts.ts";
import { trialFormat } from "./noise-format.ts";
import { text } from "./rig-format.ts";

/** Where a noise at a position comes in, as it is printed. */
export const noiseResult = z
  .object({
    noise: z.enum(noises).describe("What is heard."),
    sure: z.boolean().describe("Whether the first suspect has 90 %."),
    suspects: z
      .array(
        z.object({
          probability: probability("How likely it is one of these"),
          causes: z
            .array(
              z.object({
                cause: text("Where it comes in, by its name on the list."),
                part: text("The part that it is about.").exactOptional(),
                words: text("Where it comes in, a sentence without its full stop."),
                means: text("What that is, in a sentence or two."),
                remedies: z.array(z.string()).describe("What helps, what costs least first."),
                cautions: z.array(z.string()).describe("What must be kept to with it."),
              }),
            )
            .describe("No trial here tells them apart; the likeliest first."),
        }),
      )
      .describe("The likeliest first; those under 1 in 100 are left out."),
    next: z
      .object({
        trial: trialFormat,
        words: text("What to do, and what to ask then: sentences."),
        seconds: seconds("To do it and to undo it"),
        bits: z.number().min(0).describe("What it is expected to tell, in bits."),
      })
      .exactOptional()
      .describe("What to try next; left out where nothing tells enough."),
  })
  .meta({ id: "NoiseResult", description: "Where a noise comes in." });

import { z } from "zod";
import { probability, seconds } from "./amounts.ts";
import { askedFormat, foundFormat } from "./finding-format.ts";
import { moveFormat } from "./move-format.ts";
import { noiseResult } from "./noise-result-format.ts";
import { text } from "./rig-format.ts";

const suspectedFault = z
  .object({
    id: text("The fault's name in this rig."),
    part: text("The part that has it."),
    place: text("Where a hand or an eye goes."),
    words: text("What is wrong, a sentence without its full stop."),
    mend: text("What to do about it, after 'volume down first'."),
    seconds: seconds("To put it right"),
    probability: probability("How likely it is there now"),
  })
  .meta({ id: "SuspectedFault" });

const reason = z
  .object({
    asked: foundFormat.describe("What was asked of a person, or measured by an instrument."),
    answers: z
      .array(
        z.object({
          question: text("Which question of the check."),
          words: text("Predicted against given, a sentence."),
          predicted: text("The likeliest answer, if this suspect were all that is wrong."),
          given: z
            .array(z.string())
            .describe("What was answered: several where it may have been any of them."),
          likelihood: probability("How likely what was given is, if this were all that is wrong"),
        }),
      )
      .describe("Question by question."),
  })
  .meta({ id: "Reason", description: "One finding, against what a suspect predicts." });

const check = z
  .object({
    asked: askedFormat,
    words: text("What to ask, in a few words."),
  })
  .meta({ id: "Check" });

const suspect = z
  .object({
    group: text("The id of its group."),
    probability: probability("How likely one of its faults is there now"),
    faults: z
      .array(suspectedFault)
      .describe("Those still possible, the likeliest first. No check on offer tells them apart."),
    explanation: z
      .array(reason)
      .describe("Finding by finding, for the likeliest of them, of the rig as it was then."),
    apart: check
      .extend({
        instead: z
          .array(z.string())
          .describe(
            "For each question the answer that would speak for this suspect, as in a case.",
          ),
        answers: z.array(z.string()).describe("The same in words."),
      })
      .exactOptional()
      .describe(
        "The cheapest check that would tell this suspect from the first, where there is one.",
      ),
  })
  .meta({ id: "Suspect" });

const next = z
  .discriminatedUnion("next", [
    z.object({
      next: z.literal("check").describe("Ask this, or measure it."),
      asked: foundFormat.describe("What to ask of a person, or to measure."),
      words: text("What to ask, in a few words."),
      seconds: seconds("To ask it and take the answer"),
    }),
    z.object({
      next: z.literal("action").describe("Do this, then hear again."),
      move: moveFormat,
      cures: z.boolean().describe("Whether it may cure; else it is done to see what changes."),
      words: text("What to do, a sentence."),
      seconds: seconds("To do it, and to undo it where it is done to see"),
    }),
    z.object({
      next: z.literal("verdict").describe("Nothing is left to ask: mend this."),
      sure: z.boolean().describe("Whether the first suspect has 95 %."),
      fits: z.boolean().describe("Whether the answers go with anything on the list."),
      move: moveFormat
        .exactOptional()
        .describe("The repair to make; left out where none can be made here."),
      words: text("What to do, a sentence."),
      seconds: seconds("To do it").exactOptional(),
    }),
    z.object({
      next: z.literal("nothing").describe("This position is healthy."),
      words: text("A sentence."),
    }),
  ])
  .meta({ id: "Next", description: "What this position needs now." });

const weighed = z
  .object({
    seconds: seconds("What is expected from here to a working rig, going on for the best"),
    others: z
      .array(
        z.object({
          words: text("What to do or to ask, a sentence."),
          seconds: seconds("To do it"),
          expected: seconds("What is expected from here to a working rig, if this comes first"),
        }),
      )
      .describe("The cheapest first."),
  })
  .meta({ id: "Weighed", description: "Why this next: what else was weighed." });

const positionResult = z
  .object({
    position: text("Its id."),
    name: text("What stands on its tape."),
    state: z
      .enum(["not heard", "begun", "healthy", "wrong", "unsure", "absent"])
      .describe("How it stands."),
    trouble: probability("How likely something that can be heard is wrong on the way to it"),
    unheard: probability(
      "How likely something is wrong there that cannot be heard, alone or since two faults cancel",
    ),
    suspects: z
      .array(suspect)
      .describe(
        "Those not ruled out, five at most beside the one that a verdict names, which is first.",
      ),
    next,
    noises: z
      .array(noiseResult)
      .exactOptional()
      .describe("Left out where nobody complained of a noise and nothing was tried against one."),
    weighed: weighed.exactOptional().describe("Left out before anything points to trouble."),
    notTested: z
      .array(z.string())
      .describe("Faults on the way to it that answer as a healthy chain does, in words."),
  })
  .meta({ id: "PositionResult" });

const group = z
  .object({
    group: text("Its id: that of its likeliest fault before anything was found."),
    positions: z.array(z.string()).describe("The ids of the positions it concerns."),
    faults: z.array(z.string()).describe("The ids of its faults, the likeliest beforehand first."),
    inaudible: z
      .boolean()
      .describe("They answer exactly as a healthy chain, to every check by ear."),
  })
  .meta({ id: "Group", description: "Faults that no check on offer in this rig tells apart." });

/** The name and the version of the format. */
export const diagnosisFormatName = "leftwright diagnosis";
export const diagnosisVersion = 1;

/** What is made of a case. */
export const diagnosisFormat = z
  .object({
    format: z.literal(diagnosisFormatName).describe("The name of this format."),
    version: z.literal(diagnosisVersion).describe("The version of this format."),
    rig: text("What the rig is called."),
    positions: z.array(positionResult).describe("Every position, or the one that was asked for."),
    groups: z.array(group).describe("Every group on the way to these positions."),
    neverTested: z
      .array(z.string())
      .describe("What no check here can tell, in words, and noises that nobody asked after."),
  })
  .meta({
    title: "Leftwright diagnosis",
    description: "Suspects, groups, the next check and the explanation, made from a case.",
  });

export type Diagnosis = z.infer<typeof diagnosisFormat>;
export type PositionResult = Diagnosis["positions"][number];
export type SuspectResult = PositionResult["suspects"][number];
export type NextResult = PositionResult["next"];
export type WeighedResult = NonNullable<PositionResult["weighed"]>;
export type NoiseResult = NonNullable<PositionResult["noises"]>[number];
export type GroupResult = Diagnosis["groups"][number];

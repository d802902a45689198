import { z } from "zod";
import { complaints } from "#core/checks/complaints.ts";
import { bends } from "#core/checks/finding.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { earChecks } from "#core/index.ts";
import { noticedFormat } from "./noise-format.ts";
import { text } from "./rig-format.ts";

const position = text("The id of a position.");

const names = earChecks.map(({ name }) => name);

/** What each check asks, and its closed list of answers. */
const lists = [
  ...earChecks.map(
    ({ name, questions }) =>
      `${name}: ${questions.map((one) => `${one.name} (${one.answers.join(" | ")})`).join(", then ")}`,
  ),
  `complaint: ${complaints.join(" | ")}`,
  `twist: ${twistAnswers.join(" | ")}`,
  "look: as it should be | the id of a fault that the look shows, all depths of a plug being 'not home'",
].join("; ");

/** What can be asked of a person. */
export const askedFormat = z
  .discriminatedUnion("check", [
    z.object({ check: z.enum(names).describe("A check by ear."), position }),
    z.object({
      check: z.literal("complaint").describe("What somebody complains of, unasked."),
      position,
    }),
    z.object({
      check: z.literal("look").describe("A look at a place; nothing is touched."),
      place: text("A part, a socket of a box as 'mixer, phones', or a person."),
    }),
    z.object({
      check: z.literal("twist").describe("A plug twisted while something plays."),
      part: text("The part whose plug it is."),
      plug: text("Which of its plugs."),
    }),
  ])
  .meta({ id: "Asked", description: "What was asked of a person." });

const results = z.array(z.array(z.string()));

const answered = z.object({
  asked: askedFormat,
  results: results.describe(
    `For each question the answers it may have been: one if it was clear, all or none for 'can't tell'. ${lists}`,
  ),
  otherTimes: results
    .exactOptional()
    .describe("'Sometimes': what was heard at other times, with nothing touched in between."),
});

const reading = z.object({
  asked: z
    .object({
      check: z
        .literal("continuity")
        .describe("A meter, on a part that is unplugged at all of its ends."),
      part: text("The part."),
      from: text("One contact, as 'plug.tip'."),
      to: text("The other contact."),
    })
    .describe("What was measured."),
  ohms: z
    .number()
    .min(0)
    .exactOptional()
    .describe("What the meter read, in Ω. Left out where it showed an open circuit."),
  bent: z
    .enum(bends)
    .exactOptional()
    .describe("What the meter did while the part was bent. Left out where nobody bent it."),
});

const gain = (of: string) =>
  z.tuple([z.number(), z.number()]).describe(`${of}: real and imaginary part, a ratio.`);

const measured = z.object({
  asked: z
    .object({
      check: z.literal("matrix").describe("The ear matrix of a position, measured at 1 kHz."),
      position,
    })
    .describe("What was measured."),
  gains: z
    .tuple([
      gain("The left ear, of the left"),
      gain("The left ear, of the right"),
      gain("The right ear, of the left"),
      gain("The right ear, of the right"),
    ])
    .describe("Ratios, to the largest gain of a healthy chain."),
  error: z
    .number()
    .min(0)
    .describe("One standard deviation of each real and imaginary part, a ratio."),
  level: z
    .literal("as it comes")
    .exactOptional()
    .describe(
      "No healthy chain was measured first: all gains may be too large or too small by one factor.",
    ),
});

/** What was asked of a person or measured by an instrument. */
export const foundFormat = z.union([
  askedFormat,
  reading.shape.asked,
  measured.shape.asked,
  noticedFormat.shape.asked,
]);

/** What was found: the same as the core's `Finding`, as a format. */
export const findingFormat = z
  .union([answered, reading, measured, noticedFormat])
  .meta({ id: "Finding", description: "What was found, by a person or by an instrument." });

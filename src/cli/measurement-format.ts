import { z } from "zod";
import { refusals } from "#core/measurement/return.ts";
import { codings } from "#recording/format-chunk.ts";
import { oddities } from "#recording/trouble.ts";
import { count, estimate, input, number, response } from "./input-format.ts";
import { text } from "./rig-format.ts";

const place = {
  from: number("When in the file it begins, in s."),
  to: number("When in the file it ends, in s."),
  channels: z
    .array(count("A channel of the file."))
    .describe("The channels that were taken, counted from 1: one or two."),
};

const playing = z
  .discriminatedUnion("result", [
    z.object({
      result: z.literal("measured").describe("It was measured."),
      ...place,
      stretches: z
        .enum(["both", "first", "second"])
        .describe(
          "Which stretches of the signal are there from end to end; with one alone each tone has one programme only.",
        ),
      inputs: z.array(input).describe("Channel by channel."),
      delay: estimate(
        "From the beginning of this playing to that of the signal as the strongest entry has it",
        "s",
      ),
      between: estimate(
        "How much later the right programme comes than the left",
        "s",
      ).exactOptional(),
      drift: estimate(
        "By how much longer the recording lasts than what was played",
        "parts of a million",
      ),
      responses: z.array(response).describe("Tone by tone, the lowest first."),
    }),
    z.object({
      result: z.literal("refused").describe("It is not judged."),
      ...place,
      refused: z.enum(refusals).describe("Why."),
      measured: number(
        "What was measured of that; left out where it is no number.",
      ).exactOptional(),
      bound: number("The bound that it broke; left out where it is no number.").exactOptional(),
      words: text("Why, and what to do: sentences."),
    }),
  ])
  .meta({ id: "Playing", description: "One playing of the signal in the recording." });

/** The name and the version of the format. */
export const measurementFormatName = "leftwright measurement";
export const measurementVersion = 1;

/** What is made of a recording. */
export const measurementFormat = z
  .object({
    format: z.literal(measurementFormatName).describe("The name of this format."),
    version: z.literal(measurementVersion).describe("The version of this format."),
    file: z
      .object({
        container: z.enum(["RIFF", "RF64"]).describe("How the file is laid out."),
        coding: z.enum(codings).describe("How its samples are written."),
        channels: count("How many channels it has."),
        rate: number("Its sampling rate, in Hz."),
        frames: count("Samples a channel."),
      })
      .describe("The file as it was read."),
    warnings: z
      .array(
        z.object({
          odd: z.enum(oddities).describe("What is odd about the file."),
          words: text("The same, a sentence."),
        }),
      )
      .describe("What is odd about a file that was read all the same."),
    found: count("How often the signal was found."),
    playings: z.array(playing).describe("The first twenty playings, in their order."),
    words: text("What was found, a sentence."),
  })
  .meta({
    title: "Leftwright measurement",
    description: "What a recording says of everything between output and input.",
  });

export type Measurement = z.infer<typeof measurementFormat>;
export type PlayingResult = Measurement["playings"][number];
export type MeasuredResult = Extract<PlayingResult, { result: "measured" }>;
export type InputResult = MeasuredResult["inputs"][number];
export type EntryResult = InputResult["left"];

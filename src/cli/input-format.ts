import { z } from "zod";

/** A number with a description. */
export const number = (description: string) => z.number().describe(description);
const sign = (description: string) =>
  z
    .union([z.literal(1), z.literal(-1)])
    .exactOptional()
    .describe(description);
/** A whole number from nothing up. */
export const count = (of: string) => z.number().int().min(0).describe(of);

/** A number with the error it may have. */
export const estimate = (of: string, unit: string) =>
  z
    .object({
      value: number("What was measured."),
      error: z.number().min(0).describe("The standard deviation of its error."),
    })
    .describe(`${of}, in ${unit}.`);

const entry = z
  .object({
    level: number(
      "Root mean square of the gain over all tones, in dB; left out where it is nothing.",
    ).exactOptional(),
    error: number(
      "The standard deviation of the level's error, in dB; left out where there is no level to err.",
    ).exactOptional(),
    carried: z.boolean().describe("Whether it stands out of the noise."),
    polarity: sign("1 as sent, -1 upside down; left out where it is not to be told."),
    late: estimate("How much later it comes than the delay of the whole", "s").exactOptional(),
  })
  .meta({ id: "Entry", description: "What one channel has of one programme." });

const gain = z
  .object({
    re: number("Its real part."),
    im: number("Its imaginary part."),
    error: number("The standard deviation of the error of each part."),
  })
  .meta({ id: "Gain", description: "A complex gain: out over in." });

const level = (of: string) =>
  number(`${of}, in dBFS; left out where there is none.`).exactOptional();

/** One channel of the recording. */
export const input = z
  .object({
    channel: count("Which channel of the file, counted from 1."),
    left: entry.describe("What it has of the left programme."),
    right: entry.describe("What it has of the right programme."),
    tones: level("Root mean square of the tones"),
    noise: level("Root mean square of the noise up to 15 kHz, without tones, hum and distortion"),
    signalToNoise: number(
      "The tones over the noise, in dB; left out where either is nothing.",
    ).exactOptional(),
    crosstalk: z
      .object({
        level: number(
          "Against the stronger programme there, in dB; left out where it is nothing.",
        ).exactOptional(),
        sign: sign(
          "1 where it pushes the same way as the stronger, -1 the other way; left out where it is not to be told.",
        ),
      })
      .exactOptional()
      .describe("The weaker programme, where there is a stronger one."),
    hum: z
      .object({
        mains: z.union([z.literal(50), z.literal(60)]).describe("Which mains, in Hz."),
        frequency: number("The fundamental as measured, in Hz."),
        levels: z
          .array(z.number().nullable())
          .describe(
            "Root mean square of each line in dBFS, the fundamental first; null where none stands out or it cannot be told.",
          ),
      })
      .exactOptional()
      .describe("Lines of the mains, where some stand out of the noise."),
    distortion: z
      .object({
        second: estimate(
          "What the second order makes, against the tones",
          "parts of their root mean square",
        ),
        third: estimate(
          "What the third order makes, against the tones",
          "parts of their root mean square",
        ),
      })
      .exactOptional()
      .describe("What distortion makes, where it can be told."),
  })
  .meta({ id: "Input", description: "One channel of the recording." });

/** The gains at one tone. */
export const response = z
  .object({
    frequency: number("A tone, in Hz."),
    inputs: z
      .array(
        z.object({
          left: gain
            .exactOptional()
            .describe("Of the left programme; left out where it was not played at this tone."),
          right: gain
            .exactOptional()
            .describe("Of the right programme; left out where it was not played at this tone."),
        }),
      )
      .describe("Channel by channel, in the order of the inputs."),
  })
  .meta({
    id: "Response",
    description: "The gains at one frequency; phases are as if all came earlier by the delay.",
  });

import { z } from "zod";
import { caseFormatName, caseVersion } from "#core/session/case.ts";
import { findingFormat } from "./finding-format.ts";
import { moveFormat } from "./move-format.ts";
import { rigFormat, text } from "./rig-format.ts";

/** What every entry bears besides what it says. */
const stamp = {
  id: z
    .string()
    .exactOptional()
    .describe("Left out: its place in the log, from '1'. The drawing in `rig` has the id '0'."),
  at: z
    .number()
    .exactOptional()
    .describe("When, in ms since 1970. Left out: when the entry before it was made."),
  seen: z
    .string()
    .exactOptional()
    .describe("The id of the last entry its author had seen. Left out: of the one before it."),
};

const entryFormat = z
  .discriminatedUnion("entry", [
    z.object({
      entry: z.literal("drawing").describe("What the rig is, for the whole session."),
      rig: rigFormat,
      ...stamp,
    }),
    z.object({
      entry: z.literal("move").describe("Somebody changed something, and it holds from then on."),
      move: moveFormat,
      ...stamp,
    }),
    z.object({
      entry: z
        .literal("cannot")
        .describe(
          "A move that was asked for and cannot be made here, since there is no other set.",
        ),
      move: moveFormat,
      ...stamp,
    }),
    z.object({
      entry: z.literal("finding").describe("Something was found."),
      finding: findingFormat,
      level: z
        .number()
        .exactOptional()
        .describe("How loud the test signal was, in dBFS. Left out: not known."),
      ...stamp,
    }),
    z.object({
      entry: z.literal("absent").describe("Nobody is at a position."),
      position: text("Which position."),
      ...stamp,
    }),
    z.object({
      entry: z.literal("titled").describe("What the session is called, and who does it."),
      name: text("The name of the session.").exactOptional(),
      who: text("Who does it.").exactOptional(),
      ...stamp,
    }),
    z.object({
      entry: z.literal("taken back").describe("An earlier entry does not hold."),
      taken: text("The id of that entry."),
      ...stamp,
    }),
  ])
  .meta({ id: "Entry", description: "One entry of a log." });

/** What the page says of a session that it writes to a file. */
const aboutFormat = z
  .object({
    id: text("What it was kept under: brought in again it is known to be the same."),
    written: z.number().describe("When the file was written, in ms since 1970."),
    bench: z
      .int()
      .exactOptional()
      .describe("The number of the simulated rig. Left out for real gear, and where it is hidden."),
  })
  .meta({ id: "Session", description: "What a kept session is besides its log." });

/** A case as it stands in a file: a rig, and the log of what was found and changed. */
export const caseFormat = z
  .object({
    format: z.literal(caseFormatName).describe("The name of this format."),
    version: z.literal(caseVersion).describe("The version of this format."),
    rig: rigFormat
      .exactOptional()
      .describe("The rig as drawn. Left out where a drawing stands in the log."),
    session: aboutFormat.exactOptional(),
    log: z.array(entryFormat).describe("What was drawn, found, changed and taken back, in order."),
  })
  .meta({
    title: "Leftwright case",
    description:
      "A headphone rig and the log of a session with it. An unknown key is kept, and named as a warning.",
  });

export type Case = z.infer<typeof caseFormat>;
export type CaseEntry = z.infer<typeof entryFormat>;

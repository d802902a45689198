import { z } from "zod";
import { type PartKind, partCatalogue, wantedFeeds } from "#core/index.ts";

/** A text with a description. */
export const text = (description: string) => z.string().describe(description);

const kinds = Object.keys(partCatalogue) as [PartKind, ...PartKind[]];

const partFormat = z.object({
  id: text("The part's name in this rig, as 'feed lead'. No two parts share one."),
  first: text(
    "What it was called when it was first drawn, where it was given another name since.",
  ).exactOptional(),
  kind: z
    .enum(kinds)
    .describe(
      "What sort of part it is. The people are added by themselves, unless they are drawn.",
    ),
  settings: z
    .record(z.string(), z.union([z.number(), z.string()]))
    .exactOptional()
    .describe(
      "What is said of it besides its kind, as its kind has it: numbers in Ω, F, m, AWG, s or dB. What is left out is typical.",
    ),
  controls: z
    .record(z.string(), z.number())
    .exactOptional()
    .describe(
      "Controls that were set otherwise than such a part usually stands, as its kind has them.",
    ),
  good: z.boolean().exactOptional().describe("It is known to be good: nothing is wrong with it."),
  untried: z
    .number()
    .min(1)
    .exactOptional()
    .describe(
      "Its wires were soldered just now and nobody tried them: so many times as likely wrong as in a lead in use.",
    ),
});

const connectionFormat = z.object({
  part: text("The part whose plug it is."),
  plug: text("Which of its plugs."),
  into: text("The part whose socket it is."),
  socket: text("Which of its sockets."),
  sure: z.boolean().exactOptional().describe("It is known to be home and where it belongs."),
});

const positionFormat = z.object({
  id: text("The position's name in findings and moves, as 'position 1'."),
  name: text("What stands on its tape, as '1 host'."),
  wears: text("The headphones there, or the instrument, a part of the rig."),
  turned: z
    .boolean()
    .exactOptional()
    .describe("They are worn the other way round on purpose, to see what changes."),
  wants: z
    .enum(wantedFeeds)
    .exactOptional()
    .describe("What is sent there because it is wanted so. Left out: stereo."),
});

/** A rig as drawn: the same as the core's `Rig`, as a format. */
export const rigFormat = z
  .object({
    name: text("What the rig is called."),
    parts: z.array(partFormat).describe("Every box, lead, adapter and set of headphones."),
    plugged: z.array(connectionFormat).describe("Which plug is in which socket."),
    positions: z
      .array(positionFormat)
      .describe("The places where somebody listens, or an instrument stands."),
  })
  .meta({ id: "Rig", description: "A rig as drawn: parts, and which plug is in which socket." });

import { z } from "zod";
import { text } from "./rig-format.ts";

const part = text("The id of a part.");
const plug = text("Which of its plugs.");
const place = text("A part, a socket of a box as 'mixer, phones', or a person.");

/** What somebody changed: the same as the core's `Move`, as a format. */
export const moveFormat = z
  .discriminatedUnion("move", [
    z.object({
      move: z.literal("set right").describe("Everything a look can show there was set right."),
      place,
    }),
    z.object({
      move: z.literal("replaced").describe("What is there was replaced by a good one, for good."),
      place,
    }),
    z.object({
      move: z.literal("plugged anew").describe("A plug was pulled out and pushed home again."),
      part,
      plug,
    }),
    z.object({
      move: z.literal("exchanged").describe("Each stands where the other stood."),
      parts: z.tuple([part, part]).describe("The ids of two parts that changed places."),
    }),
    z.object({
      move: z
        .literal("known good in")
        .describe(
          "The part was laid aside, and one known to be good put in its place, with the id 'known good' and its own.",
        ),
      part,
    }),
    z.object({
      move: z
        .literal("put back")
        .describe("What was laid aside is in its place again, or what was moved in its socket."),
      part,
    }),
    z.object({
      move: z.literal("moved").describe("A plug was moved to a socket that nothing stood in."),
      part,
      plug,
      into: text("The part whose socket it is."),
      socket: text("Which of its sockets."),
    }),
    z.object({
      move: z
        .literal("turned round")
        .describe("The headphones were turned round on the head; a second time turns them back."),
      position: text("The id of a position."),
    }),
    z.object({
      move: z.literal("set").describe("A control was set, as a balance to its end."),
      part,
      control: text("Which control, as the part's kind has it."),
      value: z.number().describe("What it stands at; a balance from −1, left, to 1, right."),
    }),
  ])
  .meta({ id: "Move", description: "What somebody changed." });

import { type BadCase, finding, first, move } from "./bad-case.ts";

/** Findings and moves that name what is not there. */
export const badNames: readonly BadCase[] = [
  first(
    "a position the rig lacks",
    "/log/0/finding/asked/position: expected one of position 1",
    finding({ check: "left", position: "balcony" }),
  ),
  first(
    "an answer the check lacks",
    "/log/0/finding/results/0/0: expected one of",
    finding({ check: "left", position: "position 1" }, { results: [["loud"]] }),
  ),
  first(
    "an answer at other times",
    "/log/0/finding/otherTimes/1/0: expected one of",
    finding({ check: "pair", position: "position 1" }, { results: [], otherTimes: [[], ["loud"]] }),
  ),
  first(
    "an answer too many",
    "/log/0/finding/results/1: expected answers to 1 questions",
    finding({ check: "left", position: "position 1" }, { results: [[], []] }),
  ),
  first(
    "a complaint nobody has",
    "/log/0/finding/results/0/0: expected one of only the left ear works",
    finding({ check: "complaint", position: "position 1" }, { results: [["bored"]] }),
  ),
  first(
    "a look at nothing",
    "/log/0/finding/asked/place: expected one of",
    finding({ check: "look", place: "ceiling" }),
  ),
  first(
    "a twist of no plug",
    "/log/0/finding/asked/plug: expected one of near, far",
    finding({ check: "twist", part: "feed lead", plug: "stem" }),
  ),
  first(
    "a meter on no part",
    "/log/0/finding/asked/part: expected the id of a part",
    finding({ check: "continuity", part: "rope", from: "a", to: "b" }, {}),
  ),
  first(
    "a meter on no contact",
    "/log/0/finding/asked/to: expected one of",
    finding({ check: "continuity", part: "feed lead", from: "near.tip", to: "near.tap" }, {}),
  ),
  first(
    "a part replaced that is not there",
    "/log/0/move/place: expected a part",
    move({ move: "replaced", place: "rope" }),
  ),
  first(
    "an exchange with nothing",
    "/log/0/move/parts/1: expected the id of a part",
    move({ move: "exchanged", parts: ["headphones 1", "rope"] }),
  ),
  first(
    "an exchange of unlike parts",
    "/log/0/move: expected a move that leaves",
    move({ move: "exchanged", parts: ["headphones 1", "feed lead"] }),
  ),
  first(
    "put back what was never aside",
    "/log/0/move/part: expected a part that was laid aside",
    move({ move: "put back", part: "feed lead" }),
  ),
  first("a move that cannot be, of nothing", "/log/0/move/part: expected the id of a part", {
    entry: "cannot",
    move: { move: "known good in", part: "rope" },
  }),
  first(
    "no such move",
    '/log/0/move/move: expected "set right"',
    move({ move: "sold", part: "mixer" }),
  ),
  first(
    "moved to a socket that is taken",
    "/log/0/move/socket: expected a part with a socket that is free",
    move({
      move: "moved",
      part: "headphones 1",
      plug: "plug",
      into: "amplifier",
      socket: "output 2",
    }),
  ),
  first(
    "a control that is not there",
    "/log/0/move/control: expected one of",
    move({ move: "set", part: "mixer", control: "warp", value: 1 }),
  ),
  first(
    "nobody to turn them round",
    "/log/0/move/position: expected one of position 1",
    move({ move: "turned round", position: "balcony" }),
  ),
];

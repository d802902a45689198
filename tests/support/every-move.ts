import type { Move } from "#core/rig/moves.ts";

/** One of every kind of move. */
export const everyMove: Readonly<Record<string, Move>> = Object.fromEntries(
  (
    [
      { move: "set right", place: "mixer" },
      { move: "replaced", place: "mixer, phones" },
      { move: "plugged anew", part: "feed lead", plug: "far" },
      { move: "exchanged", parts: ["headphones 1", "headphones 2"] },
      { move: "known good in", part: "feed lead" },
      { move: "put back", part: "feed lead" },
      { move: "moved", part: "feed lead", plug: "near", into: "mixer", socket: "phones" },
      { move: "turned round", position: "position 1" },
      { move: "set", part: "mixer", control: "balance", value: 1 },
    ] satisfies readonly Move[]
  ).map((move) => [move.move, move]),
);

import { expect, test } from "vitest";
import { answeredByCups, type CupGains } from "#core/checks/cups-heard.ts";

/** Common practice, no source: what a person would say who put an ear to each cup. */
const table: readonly (readonly [string, CupGains, readonly string[]])[] = [
  [
    "healthy",
    [
      [0.1, 0.001],
      [0.001, 0.1],
    ],
    ["left ear", "right ear", "middle", "all round"],
  ],
  [
    "sides exchanged",
    [
      [0, 1],
      [1, 0],
    ],
    ["right ear", "left ear", "middle", "all round"],
  ],
  [
    "mono",
    [
      [1, 1],
      [1, 1],
    ],
    ["middle", "middle", "middle", "nothing"],
  ],
  [
    "one side inverted",
    [
      [1, 0],
      [0, -1],
    ],
    ["left ear", "right ear", "all round", "middle"],
  ],
  [
    "return lost",
    [
      [1, -1],
      [-1, 1],
    ],
    ["all round", "all round", "nothing", "all round"],
  ],
  [
    "left dead",
    [
      [0, 0],
      [0, 1],
    ],
    ["nothing", "right ear", "right ear", "right ear"],
  ],
  [
    "nothing",
    [
      [0, 0],
      [0, 0],
    ],
    ["nothing", "nothing", "nothing", "nothing"],
  ],
];

test.for(table)("two cups, %s, answer as ears would", ([, gains, expected]) => {
  const answered = answeredByCups("position 1", gains);
  expect(answered.map(({ asked }) => asked.check)).toEqual(["left", "right", "pair"]);
  expect(answered.flatMap(({ results }) => results.flat())).toEqual(expected);
});

import { expect, test } from "vitest";
import type { FlexEvent } from "#core/measurement/flex-names.ts";
import { eventWords, placeWords, worstFirst } from "#ui/screens/flex-words.ts";
import { words as english } from "#ui/words/english.ts";

const event = (part: Partial<FlexEvent>): FlexEvent => ({
  id: 1,
  at: 3,
  duration: 0.012,
  kind: "dropout",
  fault: "tip",
  cause: "open",
  depth: 40,
  atLeast: false,
  breaks: 1,
  broken: 0.012,
  going: false,
  ...part,
});

test.each([
  [{}, "left gone for 12 ms, at the tip's wire"],
  [{ depth: 6.02 }, "left down 6.0 dB for 12 ms, at the tip's wire"],
  [{ cause: "short" }, "left gone for 12 ms, shorted, at the tip's wire"],
  [
    { fault: "ring", duration: 1.2, going: true },
    "right gone for 1.2 s so far, at the ring's wire",
  ],
  [
    { kind: "crackle", breaks: 3, duration: 0.25 },
    "left gone, 3 times in 250 ms, at the tip's wire",
  ],
  [
    { fault: "sleeve", duration: 0.1 },
    "return gone, only the difference left for 100 ms, at the sleeve's wire",
  ],
  [{ fault: "tip to ring", cause: "short" }, "left and right touched for 12 ms, tip to ring"],
] as const)("an event is said as one would: %j", (part, words) => {
  expect(eventWords(english, event(part))).toBe(words);
});

test.each([
  [{ along: 0.05 }, "at plug 1"],
  [{ along: 0.97 }, "at plug 2"],
  [{ along: 0.31 }, "about 3 tenths of the way from plug 1 to plug 2"],
  [{ before: { mark: { at: 1, plug: 2 }, seconds: 3.2 } }, "3.2 s after the hand passed plug 2"],
  [{ after: { mark: { at: 1, plug: 1 }, seconds: 0.5 } }, "500 ms before the hand passed plug 1"],
  [{}, "where is not known: no plug was marked"],
] as const)("its place by the marks beside it: %j", (place, words) => {
  expect(placeWords(english, place)).toBe(words);
});

test("the longest and deepest come first", () => {
  const all = [
    event({ id: 1, broken: 0.01, depth: 6 }),
    event({ id: 2, broken: 0.3, depth: 40 }),
    event({ id: 3, broken: 0.01, depth: 50 }),
  ];
  expect(worstFirst(all).map(({ id }) => id)).toEqual([2, 3, 1]);
});

test("numbers are rounded to what is read, and nought has no sign", () => {
  const { decibels, lasting, moment } = english.figures;
  expect([0.0004, 0.0021, 0.0995, 0.994, 0.996, 9.96, 59.96, 3600].map(lasting)).toEqual([
    "1 ms",
    "2 ms",
    "100 ms",
    "990 ms",
    "1.0 s",
    "10 s",
    "1 min 0 s",
    "60 min 0 s",
  ]);
  expect([0, 65.9, 3725].map(moment)).toEqual(["0:00", "1:05", "62:05"]);
  expect([-0.04, -6.02, 3].map(decibels)).toEqual(["0.0 dB", "−6.0 dB", "3.0 dB"]);
});

import { expect, test } from "vitest";
import { english } from "#core/words/english.ts";

test.each([
  ["mixer", "the mixer"],
  ["XLR lead", "the XLR lead"],
  ["desk amp", "the desk amp"],
  ["drummer's box", "the drummer's box"],
  ["amplifier 2", "amplifier 2"],
  ["mixer, output 1", "the mixer, output 1"],
  ["amplifier 2, output 1", "amplifier 2, output 1"],
  ["headphones", "headphones"],
  ["Stage left amp", "Stage left amp"],
  ["Stage left amp, output 1", "Stage left amp, output 1"],
  ["Überbox", "Überbox"],
  ["my amp", "my amp"],
  ["The old one", "The old one"],
])("%s in a sentence", (place, said) => {
  expect(english.names.within(place)).toBe(said);
});

test("a name that somebody typed has no article, wherever a fault is said to be", () => {
  const { where, report } = english;
  const spot = { part: "feed lead", at: "far", into: "Stage left amp" };
  expect(where(spot)).toBe("the plug of the feed lead at Stage left amp");
  expect(where({ ...spot, socket: "in 2" })).toBe(
    "the plug of the feed lead (in the socket marked in 2 at Stage left amp)",
  );
  expect(where({ part: "Stage left amp", at: "output 1" })).toBe("Stage left amp, output 1");
  expect(report.seenAt("not pushed home", "Stage left amp", undefined)).toBe(
    "not pushed home, at Stage left amp",
  );
  expect(report.seenAt("not pushed home", "mixer", "left")).toBe(
    "not pushed home, the left plug at the mixer",
  );
});

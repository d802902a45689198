import { expect, test } from "vitest";
import { words as english } from "#ui/words/english.ts";
import { words as german } from "#ui/words/german.ts";

test("German numbers have a comma, and names their words", () => {
  expect(german.figures.decibels(-6.14)).toBe("−6,1 dB");
  expect(german.figures.lasting(1.25)).toBe("1,3 s");
  expect(english.figures.decibels(-0.04)).toBe("0.0 dB");
  expect(english.figures.signedDecibels(-0.04)).toBe("+0.0 dB");
  expect(german.marks.socket("output 12")).toBe("Ausgang 12");
  expect(german.marks.socket("main left")).toBe("main left");
  expect(german.marks.plug("near left")).toBe("vorn links");
});

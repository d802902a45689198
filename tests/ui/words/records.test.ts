import { expect, test } from "vitest";
import { words as english } from "#ui/words/english.ts";
import { words as german } from "#ui/words/german.ts";
import { callsOf } from "./samples.ts";

/** Every text of a record, its functions called with samples. */
function textsOf(record: unknown, at: string): readonly (readonly [string, string])[] {
  if (typeof record === "string") return [[at, record]];
  if (typeof record === "function")
    return callsOf(at).flatMap((samples) =>
      textsOf((record as (...all: unknown[]) => unknown)(...samples), `${at}(${samples})`),
    );
  if (typeof record !== "object" || record === null) return [];
  return Object.entries(record).flatMap(([name, one]) => textsOf(one, at ? `${at}.${name}` : name));
}

const pageOf = ({ language: _, ...page }: typeof english) => page;

test.for([
  ["English", english],
  ["German", german],
] as const)("every text of the page in %s reads as one", ([, words]) => {
  const all = textsOf(pageOf(words), "");
  expect(all.length).toBeGreaterThan(100);
  const bad = all.filter(
    ([at, text]) =>
      text.trim() === "" ||
      // Before the letter on a cup, which the eye sees there already.
      (text !== text.trim() && at !== "asking.cupMarked") ||
      /undefined|NaN|\[object|function|=>| {2}|\. \.|\.\.|\s[.,;:?!]|,,|\(\)/.test(text),
  );
  expect(bad).toEqual([]);
});

test("no German text is the English one where it is a sentence", () => {
  const inEnglish = new Map(textsOf(pageOf(english), ""));
  const alike = textsOf(pageOf(german), "").filter(
    ([at, text]) =>
      inEnglish.get(at) === text && /[a-z] [a-z]/.test(text.replace(/sample \w+/gi, "")),
  );
  expect(alike).toEqual([]);
});

test("German numbers have a comma, and names their words", () => {
  expect(german.figures.decibels(-6.14)).toBe("−6,1 dB");
  expect(german.figures.lasting(1.25)).toBe("1,3 s");
  expect(english.figures.decibels(-0.04)).toBe("0.0 dB");
  expect(english.figures.signedDecibels(-0.04)).toBe("+0.0 dB");
  expect(german.marks.socket("output 12")).toBe("Ausgang 12");
  expect(german.marks.socket("main left")).toBe("main left");
  expect(german.marks.plug("near left")).toBe("vorn links");
});

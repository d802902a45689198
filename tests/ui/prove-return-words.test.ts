import { expect, test } from "vitest";
import { returnWords } from "#ui/screens/prove-return-words.ts";
import { words } from "#ui/words/english.ts";

test("the ohms of a return in words", () => {
  expect(returnWords(words, undefined)).toBe("");
  expect(returnWords(words, "open")).toBe("The return reads as open.");
  expect(returnWords(words, { ohms: 0.02, error: 0.001 })).toBe(
    "The return reads as it should be, give or take 0.05 Ω.",
  );
  expect(returnWords(words, { ohms: 4.1, error: 0.05 })).toBe(
    "The return reads 4.10 Ω more than it should have, give or take 0.10 Ω.",
  );
});

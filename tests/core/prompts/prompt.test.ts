import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gapsOf,
  highestOutput,
  highestPosition,
  type Prompt,
  wordsOf,
} from "#core/prompts/prompt.ts";
import { opens, phrases, promptWords } from "#core/prompts/words.ts";
import { english } from "#core/words/english.ts";

const position = (number: number): Prompt => ({ prompt: "position", number });

const said: [prompt: Prompt, words: string][] = [
  [{ prompt: "left" }, "left"],
  [{ prompt: "raise-if-nothing" }, "raise your hand if you hear nothing"],
  [position(1), "position one"],
  [position(9), "position nine"],
  [position(10), "position ten"],
  [position(19), "position nineteen"],
  [position(20), "position twenty"],
  [position(21), "position twenty one"],
  [position(40), "position forty"],
  [position(99), "position ninety nine"],
  [{ prompt: "outputs", numbers: [3, 4] }, "output three and four"],
  [{ prompt: "outputs", numbers: [63, 64] }, "output sixty three and sixty four"],
];

describe("a prompt in words", () => {
  test.for(said)("%j is said: %s", ([prompt, words]) => {
    const texts = wordsOf(prompt).map((word) => english.prompts[word]);
    expect(texts.join(" ")).toBe(words);
  });

  test("no two positions are said alike", () => {
    const all = Array.from({ length: highestPosition }, (_, n) => wordsOf(position(n + 1)).join());
    expect(new Set(all).size).toBe(highestPosition);
  });

  test("every word is said by some prompt, and none is there twice", () => {
    const numbers = Array.from({ length: highestPosition }, (_, n) => position(n + 1));
    const outputs: Prompt = { prompt: "outputs", numbers: [1, 2] };
    const counted = new Set([...numbers, outputs].flatMap(wordsOf));
    const alone = promptWords.filter((word) => !counted.has(word));
    expect(alone).toEqual(phrases);
    expect(alone.some(opens)).toBe(false);
    expect(new Set(promptWords).size).toBe(promptWords.length);
    expect(promptWords.filter((word) => !/^[a-z]+(-[a-z]+)*$/.test(word))).toEqual([]);
  });

  test.for([0, -1, 1.5, Number.NaN, 100, Number.POSITIVE_INFINITY])(
    "position %s is refused with its bounds",
    (number) => {
      expect(() => wordsOf(position(number))).toThrow(
        new RangeError(`${number} is not a whole number from 1 to 99`),
      );
    },
  );

  test("output 65 is refused, on either place", () => {
    for (const numbers of [[65, 1] as const, [1, 65] as const])
      expect(() => wordsOf({ prompt: "outputs", numbers })).toThrow("65 is not a whole number");
  });

  test("a word that stays up is never the last, and one that does not is a number or alone", () => {
    const output = fc.integer({ min: 1, max: highestOutput });
    fc.assert(
      fc.property(fc.tuple(output, output), (numbers) => {
        const words = wordsOf({ prompt: "outputs", numbers });
        expect(words.map((word, at) => opens(word) && at === words.length - 1)).not.toContain(true);
        expect(words.filter(opens)).toEqual(["output", "and"]);
      }),
    );
  });
});

test("there is a pause before each word but the first and the ones of a number", () => {
  expect(gapsOf(wordsOf(position(21)))).toEqual([0, 0.06, 0]);
  expect(gapsOf(wordsOf(position(20)))).toEqual([0, 0.06]);
  expect(gapsOf(wordsOf({ prompt: "outputs", numbers: [30, 12] }))).toEqual([0, 0.06, 0.06, 0.06]);
  expect(gapsOf([])).toEqual([]);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gapsOf,
  highestOutput,
  highestPosition,
  type Prompt,
  wordsOf,
} from "#core/prompts/prompt.ts";
import { type SpokenTag, speaking, spokenTags } from "#core/prompts/speaking.ts";
import { isBefore, opens, phrases, promptWords } from "#core/prompts/words.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";

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

const gesagt: typeof said = [
  [{ prompt: "left" }, "linke Seite"],
  [position(1), "Platz eins"],
  [position(19), "Platz neunzehn"],
  [position(20), "Platz zwanzig"],
  [position(21), "Platz einund zwanzig"],
  [position(99), "Platz neunund neunzig"],
  [{ prompt: "outputs", numbers: [7, 38] }, "Ausgang sieben und achtund dreißig"],
];

const texts = { en: english.prompts, de: german.prompts };
const inTag = (tag: SpokenTag) => (prompt: Prompt) => wordsOf(speaking[tag], prompt);

describe("a prompt in words", () => {
  test.for([
    ...said.map((one) => ["en", ...one] as const),
    ...gesagt.map((one) => ["de", ...one] as const),
  ])("in %s %j is said: %s", ([tag, prompt, words]) => {
    expect(
      inTag(tag)(prompt)
        .map((word) => texts[tag][word])
        .join(" "),
    ).toBe(words);
  });

  test.for(spokenTags)("no two positions are said alike: %s", (tag) => {
    const all = Array.from({ length: highestPosition }, (_, n) => inTag(tag)(position(n + 1)));
    expect(new Set(all.map((words) => words.join())).size).toBe(highestPosition);
  });

  test.for(spokenTags)(
    "every word of %s has a text and is said by some prompt, none twice",
    (tag) => {
      const numbers = Array.from({ length: highestPosition }, (_, n) => position(n + 1));
      const outputs: Prompt = { prompt: "outputs", numbers: [1, 2] };
      const counted = new Set([...numbers, outputs].flatMap(inTag(tag)));
      const { words } = speaking[tag];
      const alone = words.filter((word) => !counted.has(word));
      expect(alone).toEqual(phrases);
      expect(words.filter((word) => !texts[tag][word])).toEqual([]);
      expect([...counted].filter((word) => !words.includes(word))).toEqual([]);
      expect(alone.some(opens)).toBe(false);
      expect(new Set(promptWords).size).toBe(promptWords.length);
      expect(promptWords.filter((word) => !/^[a-z]+(-[a-z]+)*$/.test(word))).toEqual([]);
    },
  );

  test.for([0, -1, 1.5, Number.NaN, 100, Number.POSITIVE_INFINITY])(
    "position %s is refused with its bounds",
    (number) => {
      expect(() => inTag("en")(position(number))).toThrow(
        new RangeError(`${number} is not a whole number from 1 to 99`),
      );
    },
  );

  test("output 65 is refused, on either place", () => {
    for (const numbers of [[65, 1] as const, [1, 65] as const])
      expect(() => inTag("en")({ prompt: "outputs", numbers })).toThrow("65 is not a whole number");
  });

  test("a word that stays up is never the last, and one that does not is a number or alone", () => {
    const output = fc.integer({ min: 1, max: highestOutput });
    fc.assert(
      fc.property(fc.tuple(output, output), (numbers) => {
        for (const tag of spokenTags) {
          const words = inTag(tag)({ prompt: "outputs", numbers });
          expect(words.map((word, at) => opens(word) && at === words.length - 1)).not.toContain(
            true,
          );
          expect(words.filter((word) => opens(word) && !isBefore(word))).toEqual(["output", "and"]);
        }
      }),
    );
  });
});

test("there is a pause before each word but the first and the ones of a number", () => {
  for (const tag of spokenTags) {
    const words = inTag(tag);
    expect(gapsOf(words(position(21)))).toEqual([0, 0.06, 0]);
    expect(gapsOf(words(position(20)))).toEqual([0, 0.06]);
    expect(gapsOf(words({ prompt: "outputs", numbers: [30, 12] }))).toEqual([0, 0.06, 0.06, 0.06]);
  }
  expect(gapsOf([])).toEqual([]);
});

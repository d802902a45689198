import { describe, expect, test } from "vitest";
import { pageSamples } from "#tests/support/page-samples.ts";
import { said } from "#tests/support/said.ts";
import { first as firstEnglish } from "#ui/words/english/first.ts";
import { words as english } from "#ui/words/english.ts";
import { first as firstGerman } from "#ui/words/german/first.ts";
import { words as german } from "#ui/words/german.ts";

/** The core's own record is asked by a test of its own. */
const page = ({ language: _, ...words }: typeof german) => words;

const records = {
  English: { ...page(english), first: firstEnglish },
  German: { ...page(german), first: firstGerman },
};

/** What entries want that are made of more than texts and numbers. */
const samples = {
  ...pageSamples,
  "first.start.rigName": () => [["Straight into the laptop"], ["Tante Hildes Bühne"]],
};

describe.each(Object.entries(records))("every word of %s", (_, record) => {
  const all = said(record, samples);

  test("is a text, with nothing left out of it", () => {
    expect(all.length).toBeGreaterThan(800);
    for (const { path, text } of all) {
      expect(typeof text, path).toBe("string");
      expect(text, path).not.toMatch(/undefined|NaN|\[object|\s\s|@|=>/);
      expect(text, path).not.toBe("");
    }
  });

  test("reads as one piece", () => {
    for (const { path, text } of all) {
      expect(text, path).not.toMatch(/\. \.|\.\.|\s[.,;:?!]|,,|\(\)/);
      // Before the letter on a cup, which the eye sees there already.
      if (path !== "asking.cupMarked") expect(text.trim(), path).toBe(text);
    }
  });

  test("stands in both languages under the same name", () => {
    const names = new Set(said(records.English, samples).map(({ path }) => path));
    for (const { path } of all) expect(names, path).toContain(path);
  });
});

test("no sentence of the page is English where German is spoken", () => {
  const texts = (record: typeof german) =>
    said(page(record), samples).map(({ path, text }, at) => ({
      key: `${path} ${at}`,
      text: text.replace(/sample \w+/gi, ""),
    }));
  const inEnglish = new Map(texts(english).map(({ key, text }) => [key, text]));
  const alike = texts(german).filter(
    ({ key, text }) => inEnglish.get(key) === text && /[a-z] [a-z]/.test(text),
  );
  expect(alike).toEqual([]);
});

test("the list of sessions tells how each stands, and 'not sure' from 'wrong'", () => {
  expect(english.sessions.noted(2, 1, 1, 5)).toBe("2 of 5 healthy, 1 wrong, 1 not sure");
  expect(english.sessions.noted(0, 0, 2, 5)).toBe("2 not sure");
  expect(english.sessions.noted(0, 0, 0, 5)).toBe("nothing settled yet");
  expect(german.sessions.noted(2, 1, 1, 5)).toBe("2 von 5 in Ordnung, 1 falsch, 1 nicht sicher");
});

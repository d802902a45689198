import { describe, expect, test } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { evening } from "#tests/support/sessions.ts";
import { helpName } from "#ui/screens/help-name.ts";
import { words as english } from "#ui/words/english.ts";
import { words as german } from "#ui/words/german.ts";
import { helpNames } from "#ui/words/help-names.ts";
import { termNames } from "#ui/words/term-names.ts";

const log = evening(6);
const at = (position: string) => helpName({ log, view: { screen: "position", position } });

describe("whose question a screen asks", () => {
  test("a position's follows from what it needs now", () => {
    expect([at("position 1"), at("position 4"), at("position 6")]).toEqual([
      "healthy",
      "verdict",
      "asked",
    ]);
    expect(at("position 5")).toBe("absent");
    const cups = { screen: "position", position: "position 1", microphone: "position 1" } as const;
    expect(helpName({ log, view: cups })).toBe("cups");
    expect(helpName({ log: [], view: { screen: "position", position: "position 1" } })).toBe(
      "asked",
    );
  });

  test("proving a lead asks for the lead, then for readings", () => {
    expect(helpName({ log, view: { screen: "prove", lead: {} } })).toBe("prove");
    expect(helpName({ log, view: { screen: "prove", lead: { by: "ear" } } })).toBe("prove reading");
  });

  test("all else asks one thing", () => {
    expect(helpName({ log, view: { screen: "listen", rig: straightIn } })).toBe("listen");
  });
});

describe.each([
  ["English", english],
  ["German", german],
] as const)("%s", (_, { help, trade }) => {
  test.each(helpNames)("%s: one question, and two or three sentences", (name) => {
    const { question, answer } = help.screens[name];
    expect(question.match(/\?/g)).toHaveLength(1);
    expect(question).toMatch(/\?$/);
    const sentences = answer.split(/[.:?] (?=[A-ZÄÖÜ])/).length;
    expect(sentences, answer).toBeGreaterThanOrEqual(2);
    expect(answer.split(/\. /).length, answer).toBeLessThanOrEqual(3);
  });

  test("every word of the trade is said in one to three sentences, and no two alike", () => {
    for (const name of termNames) {
      const { text } = trade.terms[name];
      expect(text, name).toMatch(/\.$/);
      expect(text.split(/\. /).length, name).toBeLessThanOrEqual(3);
    }
    expect(new Set(termNames.map((name) => trade.terms[name].term)).size).toBe(termNames.length);
  });
});

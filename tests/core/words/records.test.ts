import { describe, expect, test } from "vitest";
import { noises } from "#core/checks/noise.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { everyMove } from "#tests/support/every-move.ts";
import { said } from "#tests/support/said.ts";

const records = { English: { language: english }, German: { language: german } };

/** What entries want that are made of more than texts and numbers. */
const samples = {
  "language.sheet.facts": () => [[2.5, "−18,0 dBFS", "−18,0 dBFS"]],
  "language.sheet": () => [
    [-18, 48_000],
    [Number.NEGATIVE_INFINITY, 1],
  ],
  "language.refusals": () => [[0.25, 0.125]],
  "language.noises.causes": () => noises.map((noise) => ["mixer, phones", noise]),
  "language.noises.trials": () => noises.map((noise) => ["mixer, phones", noise]),
  "language.names.socket": () => [["amplifier", "output 1"]],
  "language.names": () => [
    ["feed lead"],
    ["headphones 2"],
    ["mixer, phones"],
    ["Tante Hildes Kiste"],
  ],
  "language.patching.contact": () =>
    (["TS", "TRS", "TRRS", "XLR", "RCA", "link"] as const).flatMap((plug) =>
      contactsOf(plug).map((name) => [name, plug]),
    ),
  "language.where": () =>
    [
      { part: "operator", at: "body" },
      { part: "2 reader: listener", at: "body" },
      { part: "amplifier", at: "output 1" },
      { part: "feed lead", at: "far", into: "amplifier" },
      { part: "insert lead", at: "left", into: "mixer", plug: "left", socket: "3" },
    ].map((spot) => [spot]),
  "language.moves": (path: string) => [
    [everyMove[path.split(".").at(-2) ?? ""], (id: string) => id],
  ],
};

describe.each(Object.entries(records))("every word of %s", (_, record) => {
  const all = said(record, samples);

  test("is a text, with nothing left out of it", () => {
    expect(all.length).toBeGreaterThan(1500);
    for (const { path, text } of all) {
      expect(typeof text, path).toBe("string");
      expect(text, path).not.toMatch(/undefined|NaN|\[object|\s\s|@|=>/);
      if (!path.startsWith("language.patching.units")) expect(text, path).not.toBe("");
    }
  });

  test("stands in both languages under the same name", () => {
    const names = new Set(said(records.English, samples).map(({ path }) => path));
    const own = /^language\.(complaints\.means|prompts|patching\.choices)\./;
    for (const { path } of all.filter((one) => !own.test(one.path)))
      expect(names, path).toContain(path);
  });
});

test("what may be said of a part, and of its words, is there in German wherever it is in English", () => {
  const { parameters, choices } = german.patching;
  for (const name of Object.keys(english.patching.parameters))
    expect(parameters[name], name).toBeDefined();
  for (const name of Object.keys(english.patching.choices))
    expect(choices[name], name).toBeDefined();
});

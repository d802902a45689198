import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isAnswered } from "#core/checks/finding.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { standInFeeds } from "#core/rig/stand-ins.ts";
import type { Said } from "#core/session/log.ts";
import { outcomeOf, stepAfter } from "#ui/screens/complaint-state.ts";
import { type Step, type Told, unsaid } from "#ui/screens/complaint-told.ts";

const [table = straightIn] = builtInRigs;

/** Answers to every question there may be; those that are not asked are not given. */
const answers: fc.Arbitrary<Required<Told>> = fc.record({
  said: fc.constantFrom<Told["said"] & {}>(["no voice"], ["only the left ear works"]),
  feed: fc.constantFrom<Told["feed"] & {}>(...standInFeeds, "rig in hand"),
  worn: fc.constantFrom("headphones", "in-ears", "don't know"),
  listeners: fc.constantFrom(1, 2, 5, 16),
  seat: fc.constantFrom("position 2", "position 5"),
  others: fc.constantFrom("all", "none", "don't know"),
});

/** Asked and answered one at a time; what was told, in order. */
function telling(all: Required<Told>): { told: Told; asked: readonly Step[] } {
  const asked: Step[] = [];
  let told: Told = {};
  for (let step = stepAfter(told, table); step !== undefined; step = stepAfter(told, table)) {
    asked.push(step);
    told = { ...told, [step]: all[step] };
  }
  return { told, asked };
}

const resultOf = (entry: Said): readonly string[] =>
  entry.entry === "finding" && isAnswered(entry.finding) ? (entry.finding.results[0] ?? []) : [];

describe("one complaint, one question at a time", () => {
  test("ends after at most six, and its way back goes through the same", () => {
    fc.assert(
      fc.property(answers, (all) => {
        const { told, asked } = telling(all);
        expect(asked.length).toBeLessThanOrEqual(6);
        const back: Step[] = [];
        for (let now: Told | undefined = told; now !== undefined; now = unsaid(now)) {
          const step = stepAfter(now, table);
          if (step !== undefined) back.unshift(step);
        }
        expect(back).toEqual(asked);
      }),
    );
  });

  test("the complaint is the last entry, and everybody else says the same, that all is well, or nothing", () => {
    fc.assert(
      fc.property(answers, (all) => {
        const { told } = telling(all);
        const { rig = table, position, entries } = outcomeOf(told, table);
        const said = entries.map(resultOf);
        expect(said.at(-1)).toEqual(told.said);
        expect(rig.positions.map(({ id }) => id)).toContain(position);
        const silent = [undefined, "don't know"].includes(told.others);
        expect(entries).toHaveLength(silent ? 1 : rig.positions.length);
        const theirs = told.others === "all" ? told.said : ["no complaint"];
        expect(said.slice(0, -1).every((one) => `${one}` === `${theirs}`)).toBe(true);
      }),
    );
  });

  test("a rig in hand is not drawn anew, and its seat is asked for", () => {
    const { asked, told } = telling({
      said: ["no voice"],
      feed: "rig in hand",
      worn: "headphones",
      listeners: 1,
      seat: "position 2",
      others: "none",
    });
    expect(asked).toEqual(["said", "feed", "seat", "others"]);
    expect(outcomeOf(told, table).rig).toBeUndefined();
    expect(outcomeOf(told, table).position).toBe("position 2");
  });

  test("what was not told yet is no outcome", () => {
    expect(() => outcomeOf({ said: ["hum"] }, undefined)).toThrow(/feed was not told/);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Answered, scoreOf, weakness } from "#core/training/score.ts";

describe("the score", () => {
  const said = (asked: string, given: string): Answered => ({ asked, given });

  test("by hand", () => {
    const answers = [
      said("swapped", "swapped"),
      said("mono", "swapped"),
      said("mono", "mono"),
      said("mono", "left gone"),
      said("mono", "swapped"),
      said("left gone", "left gone"),
    ];
    expect(scoreOf(answers)).toEqual({
      swapped: { asked: 1, right: 1, takenFor: {} },
      mono: { asked: 4, right: 1, takenFor: { swapped: 2, "left gone": 1 } },
      "left gone": { asked: 1, right: 1, takenFor: {} },
    });
    expect(scoreOf([])).toEqual({});
  });

  const id = fc.constantFrom("a", "b", "c");
  const answers = fc.array(fc.record({ asked: id, given: id }));

  test("adds up: right and wrong are all that was asked, all tallies all answers", () => {
    fc.assert(
      fc.property(answers, (all) => {
        const tallies = Object.values(scoreOf(all));
        const wrong = (takenFor: Readonly<Record<string, number>>) =>
          Object.values(takenFor).reduce((sum, count) => sum + count, 0);
        for (const { asked, right, takenFor } of tallies)
          expect(right + wrong(takenFor)).toBe(asked);
        expect(tallies.reduce((sum, { asked }) => sum + asked, 0)).toBe(all.length);
      }),
    );
  });

  test("does not hang on the order of the answers", () => {
    fc.assert(
      fc.property(answers, (all) => {
        expect(scoreOf(all.toReversed())).toEqual(scoreOf(all));
      }),
    );
  });

  test("weakness is of the last three", () => {
    const answers = [
      said("a", "b"),
      said("a", "b"),
      said("a", "a"),
      said("b", "a"),
      said("a", "a"),
    ];
    expect(weakness(answers, "a")).toBeCloseTo(1 / 3);
    expect(weakness(answers, "b")).toBe(1);
    expect(weakness(answers, "c")).toBeUndefined();
  });
});

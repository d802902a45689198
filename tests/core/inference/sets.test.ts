import fc from "fast-check";
import { expect, test } from "vitest";
import { setsOf } from "#core/inference/sets.ts";

test("the empty set, singles in order, pairs, threes", () => {
  expect(setsOf(["a", "b", "c"], 3)).toEqual([
    [],
    ["a"],
    ["b"],
    ["c"],
    ["a", "b"],
    ["a", "c"],
    ["b", "c"],
    ["a", "b", "c"],
  ]);
  expect(setsOf(["a", "b"], 0)).toEqual([[]]);
});

/** Every subset, by counting, so that two ways of making them are compared. */
test("as many as there are subsets that may stand together, each once", () => {
  const items = fc.array(fc.integer({ min: 0, max: 6 }), { maxLength: 8 });
  fc.assert(
    fc.property(items, fc.integer({ min: 0, max: 4 }), (some, most) => {
      const places = [...some.keys()];
      const together = (a: number, b: number) => some[a] !== some[b];
      const all = Array.from({ length: 2 ** some.length }, (_, bits) =>
        places.filter((at) => (bits & (1 << at)) > 0),
      );
      const stand = all.filter(
        (set) => set.length <= most && new Set(set.map((at) => some[at])).size === set.length,
      );
      const order = (a: readonly number[], b: readonly number[]) =>
        a.length - b.length ||
        (a.find((one, at) => one !== b[at]) ?? 0) - (b.find((one, at) => one !== a[at]) ?? 0);
      expect(setsOf(places, most, together)).toEqual(stand.toSorted(order));
    }),
  );
});

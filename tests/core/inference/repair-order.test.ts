import fc from "fast-check";
import { expect, test } from "vitest";
import { expectedRepair, repairOrder, repairsAtBest } from "#core/inference/repair-order.ts";

const orders = (some: readonly number[]): number[][] =>
  some.length === 0
    ? [[]]
    : some.flatMap((one) =>
        orders(some.filter((other) => other !== one)).map((rest) => [one, ...rest]),
      );

const some = fc.array(
  fc.record({
    p: fc.double({ min: 0.01, max: 1, noNaN: true }),
    seconds: fc.double({ min: 1, max: 300, noNaN: true }),
    mending: fc.double({ min: 0, max: 100, noNaN: true }),
    share: fc.constantFrom(0.5, 1),
  }),
  { minLength: 1, maxLength: 5 },
);

/** The exchange argument behind p/c (Kadane and Simon, 1977), against every order there is. */
test("no order costs less where each repair has a hypothesis of its own", () => {
  fc.assert(
    fc.property(some, (each) => {
      const probabilities = Float64Array.from(each, ({ p }) => p);
      const repairs = each.map(({ seconds, mending, share }, own) => ({
        seconds,
        mending,
        cures: Float64Array.from(each, (_, at) => (at === own ? share : 0)),
      }));
      const found = repairOrder(probabilities, repairs, 600);
      const least = Math.min(
        ...orders([...each.keys()]).map((order) =>
          expectedRepair(probabilities, repairs, order, 600),
        ),
      );
      expect(found.seconds / least).toBeCloseTo(1, 9);
      expect(found.order.length).toBe(each.length);
      const stopped = repairsAtBest(repairs, each.length, 600)(probabilities);
      expect(stopped).toBeLessThanOrEqual(found.seconds * (1 + 1e-9));
    }),
  );
});

test("a lead that cures two leaves a repair of one of them nothing to do", () => {
  const repairs = [
    { seconds: 100, cures: Float64Array.of(1, 0, 0) },
    { seconds: 60, cures: Float64Array.of(1, 1, 0) },
    { seconds: 50, cures: Float64Array.of(0, 0, 1) },
  ];
  const { order, seconds } = repairOrder(Float64Array.of(0.5, 0.2, 0.3), repairs);
  expect(order).toEqual([1, 2]);
  expect(seconds).toBeCloseTo(60 + 0.3 * 50, 9);
});

test("a contact put in again comes good half the time; what is left is somebody else's", () => {
  const repairs = [{ seconds: 10, cures: Float64Array.of(0.5) }];
  expect(repairOrder(Float64Array.of(1), repairs, 600).seconds).toBeCloseTo(10 + 300, 9);
  expect(repairsAtBest(repairs, 1, 600)(Float64Array.of(1))).toBeCloseTo(310, 9);
  expect(repairsAtBest(repairs, 1, 15)(Float64Array.of(1))).toBeCloseTo(15, 9);
});

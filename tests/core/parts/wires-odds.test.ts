import { expect, test } from "vitest";
import { catalogue } from "#core/parts/catalogue.ts";
import { edited, pairs } from "./wiring.ts";

/** Ways a rebuilt plug can go wrong: all permutations but the right one. */
test.each([
  ["TRS lead", "body", 5],
  ["TS lead", "body", 1],
  ["XLR lead", "body", 5],
  ["XLR to TRS lead", "body", 5],
  ["insert Y", "body", 5],
  ["insert Y", "left", 1],
  ["insert Y with TRS plugs, rings unused", "left", 5],
  ["RCA pair lead", "far right", 1],
] as const)("a %s has every wrong order of its contacts, at '%s' %i", (kind, at, count) => {
  const orders = catalogue[kind].make().faults.filter(({ slot }) => slot === `${at} order`);
  const effects = orders.map(({ edits }) =>
    JSON.stringify(pairs(edited(catalogue[kind].make(), edits))),
  );
  expect(new Set(effects).size).toBe(count);
});

test("two tips of one signal exchanged are no fault", () => {
  const names = catalogue["one-to-both lead"].make().faults.map(({ name }) => name);
  expect(names).not.toContain("tip and ring exchanged");
  expect(names).toContain("tip and sleeve exchanged");
});

/** Names and odds that built-in rigs are worked out with. */
test.each([
  ["TRS lead", "body / tip open", 15],
  ["TRS lead", "body / tip and ring shorted", 3],
  ["TRS lead", "body / ring and sleeve exchanged", 1.5],
  ["TRS lead", "body / contacts turned, tip to ring", 0.75],
  ["TRS lead", "body / return of 10 ohms", 5],
  ["TRS lead", "body / lead with two contacts", 60],
  ["TS lead", "body / tip and sleeve exchanged", 3],
  ["insert Y", "left / sleeve open", 12],
  ["insert Y", "body / both sides on one contact", 10],
  ["one-to-both lead", "body / ring open", 15],
] as const)("%s: '%s' has odds of %f in 10,000", (kind, id, weight) => {
  const fault = catalogue[kind].make().faults.find(({ at, name }) => `${at} / ${name}` === id);
  expect(fault?.weight).toBe(weight);
});

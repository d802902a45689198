import { expect, test } from "vitest";
import { refusals } from "#core/measurement/return.ts";
import { refusalText } from "#core/words/english-measuring.ts";

test.for(refusals)("'%s' is said in sentences: why, and what to do", (refused) => {
  const words = refusalText({ refused, measured: 0.25, bound: 0.125 });
  expect(words).toMatch(/^.+\. .+\.$/);
  expect(words).not.toMatch(/undefined|NaN|-\d/);
});

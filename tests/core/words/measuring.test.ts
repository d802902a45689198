import { expect, test } from "vitest";
import { refusals } from "#core/measurement/return.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { refusalText } from "#core/words/refusal-text.ts";

test.for(refusals)("'%s' is said in sentences: why, and what to do", (refused) => {
  for (const language of [english, german]) {
    const words = refusalText(language, { refused, measured: 0.25, bound: 0.125 });
    expect(words).toMatch(/^.+\. .+\.$/);
    expect(words).not.toMatch(/undefined|NaN|-\d/);
  }
});

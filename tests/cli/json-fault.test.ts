import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jsonFault } from "#cli/json-fault.ts";
import { broken } from "./broken.ts";

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe("where a text stops being JSON", () => {
  test.for([
    ["", 1, 1, "a value"],
    ["{", 1, 2, "a key or }"],
    ["[1 2]", 1, 4, "a comma or ]"],
    ['{"a":1,}', 1, 8, "a key"],
    ['{"a" 1}', 1, 6, "a colon"],
    ["[\n  1,\n  01]", 3, 3, "a value"],
    ["true false", 1, 6, "nothing more"],
    ['"a\nb"', 1, 3, "no line end and no control character in a text"],
    ['"\\x"', 1, 2, "an escape that JSON has"],
    ['"abc', 1, 5, "the end of a text, a quotation mark"],
    [`${"[".repeat(65)}${"]".repeat(65)}`, 1, 65, "at most 64 brackets within brackets"],
  ] as const)("%j", ([text, line, column, expected]) => {
    expect(jsonFault(text)).toEqual({ line, column, expected });
  });

  test("it takes just what the language's own reader takes", () => {
    const value = fc.json({ maxDepth: 4, noUnicodeString: false });
    fc.assert(
      fc.property(fc.oneof(value, broken(value), fc.string()), (text) => {
        expect(jsonFault(text) === undefined).toBe(parses(text));
      }),
      { numRuns: 2000 },
    );
  });
});

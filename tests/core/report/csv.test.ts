import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { type Cell, csvOf, guarded } from "#core/report/csv.ts";

/** Words with all that a file of commas may trip over. */
const words = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.string({ unit: fc.constantFrom(..."=+-@',;\"\r\n\t a1−Ω") }),
);
const cell: fc.Arbitrary<Cell> = fc.oneof(
  words,
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constant(undefined),
);
const table = fc
  .integer({ min: 2, max: 6 })
  .chain((wide) =>
    fc.array(fc.array(cell, { minLength: wide, maxLength: wide }), { minLength: 1, maxLength: 6 }),
  );

const read = (text: string) =>
  Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { delimiter: ",", newline: "\r\n" });

test("every cell comes back from a reader that is not ours, words behind their guard", () => {
  fc.assert(
    fc.property(table, (rows) => {
      const { data, errors } = read(csvOf(rows));
      expect(errors).toEqual([]);
      const expected = rows.map((row) =>
        row.map((one) => (typeof one === "string" ? guarded(one) : String(one ?? ""))),
      );
      expect(data).toEqual([...expected, [""]]); // each line ends, the last one too
    }),
    { numRuns: 2000 },
  );
});

test("no cell of words begins as a formula does, and none is lost by its guard", () => {
  fc.assert(
    fc.property(words, (text) => {
      const [first = [""]] = read(csvOf([[text, "end"]])).data;
      expect(first[0]).not.toMatch(/^[=+\-@\t\r]/);
      expect(first[0]?.replaceAll("'", "")).toBe(text.replaceAll("'", ""));
    }),
  );
});

test.for([";", "\t"])("nor does one where cells are parted by %j", (delimiter) => {
  fc.assert(
    fc.property(words, (text) => {
      // Without quotation marks of its own: what a reader makes of one in the midst of a cell is its own affair.
      const rows = csvOf([["words", text.replaceAll('"', "")]]).replace(/^\uFEFF/, "");
      for (const row of rows.split(/[\r\n]/))
        for (const one of row.split(delimiter).slice(1)) expect(one).not.toMatch(/^[=+\-@]/);
    }),
    { numRuns: 1000 },
  );
  expect(csvOf([[`a${delimiter}=1+1`]])).toBe(`\uFEFFa${delimiter}'=1+1\r\n`);
  expect(csvOf([["10 dB; fine", "a-b"]])).toBe("\uFEFF10 dB; fine,a-b\r\n");
});

test("a number stands as a number, with its minus", () => {
  expect(csvOf([["level", -50.5, undefined]])).toBe("\uFEFFlevel,-50.5,\r\n");
});

/** What stands in one cell: words, a number, or nothing. */
export type Cell = string | number | undefined;

/** A spreadsheet would take what begins so for a formula, or drop what stands before one. */
const atBeginning = /^(?="*[=+\-@\t\r])/;

/** One that parts cells by semicolons or tabs, as they do where the comma is for tenths, begins another cell in the midst of our words. */
const behindMark = /([;\t\r\n])(?="*[=+\-@])/g;

/** Before words that a spreadsheet might run stands an apostrophe, so that it shows them instead (CWE-1236; OWASP, CSV Injection). */
export const guarded = (words: string): string =>
  words.replace(atBeginning, "'").replace(behindMark, "$1'");

/** So it is read as UTF-8 by spreadsheets, which else guess. */
const mark = "\uFEFF";

/**
 * Rows as a file of comma-separated values: RFC 4180, with a byte order mark. A number stands as it is, with a point and a hyphen for its
 * minus; words are guarded.
 */
export const csvOf = (rows: readonly (readonly Cell[])[]): string =>
  mark + rows.map((row) => `${row.map(written).join(",")}\r\n`).join("");

function written(cell: Cell): string {
  if (cell === undefined) return "";
  if (typeof cell === "number") return String(cell);
  const safe = guarded(cell);
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

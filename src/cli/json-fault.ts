import { deepest } from "#core/session/case.ts";

/** Where a text stops being JSON. */
export interface JsonFault {
  /** From 1. */
  readonly line: number;
  /** From 1, in characters of the line. */
  readonly column: number;
  readonly expected: string;
}

/** What may come next. */
type Awaited =
  | "a value"
  | "a value or ]"
  | "a key or }"
  | "a key"
  | "a colon"
  | "a comma or ]"
  | "a comma or }"
  | "nothing more";

interface Place {
  /** In characters of the text. */
  readonly at: number;
  readonly awaited: Awaited;
  /** The brackets that are open, the innermost last. */
  readonly open: string;
}

/** Where the grammar breaks. */
interface Break {
  readonly at: number;
  readonly expected: string;
}

const scalar = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.+-])|(?:true|false|null)(?!\w)/y;

/** Finds the first place where a text breaks the grammar of JSON (RFC 8259) or goes too deep; nothing where it does not. */
export function jsonFault(text: string): JsonFault | undefined {
  let place: Place = { at: 0, awaited: "a value", open: "" };
  for (;;) {
    const at = skipped(text, place.at);
    if (at === text.length && place.awaited === "nothing more") return undefined;
    const next = step(text, { ...place, at });
    if ("expected" in next) return located(text, next);
    if (next.open.length > deepest)
      return located(text, { at, expected: `at most ${deepest} brackets within brackets` });
    place = next;
  }
}

function skipped(text: string, from: number): number {
  let at = from;
  while (at < text.length && " \t\n\r".includes(text.charAt(at))) at++;
  return at;
}

const closing: Readonly<Partial<Record<Awaited, string>>> = {
  "a value or ]": "]",
  "a comma or ]": "]",
  "a key or }": "}",
  "a comma or }": "}",
};

/** What one mark leads to. */
const after: Readonly<Partial<Record<Awaited, readonly [mark: string, awaited: Awaited]>>> = {
  "a colon": [":", "a value"],
  "a comma or ]": [",", "a value"],
  "a comma or }": [",", "a key"],
};

/** The place after one more token, or where the text is at fault. */
function step(text: string, place: Place): Place | Break {
  const { at, awaited } = place;
  const mark = text.charAt(at);
  if (mark !== "" && mark === closing[awaited]) return closed(place);
  if (awaited === "a value" || awaited === "a value or ]") return value(text, place);
  if (mark === '"' && (awaited === "a key" || awaited === "a key or }"))
    return afterText(text, at, { ...place, awaited: "a colon" });
  const [expected, next] = after[awaited] ?? [];
  return next !== undefined && mark === expected
    ? { ...place, at: at + 1, awaited: next }
    : { at, expected: awaited };
}

function value(text: string, { at, open, awaited }: Place): Place | Break {
  const mark = text.charAt(at);
  if (mark === "{") return { at: at + 1, awaited: "a key or }", open: `${open}{` };
  if (mark === "[") return { at: at + 1, awaited: "a value or ]", open: `${open}[` };
  const whole: Place = { at, awaited: afterValue(open), open };
  if (mark === '"') return afterText(text, at, whole);
  scalar.lastIndex = at;
  const [word] = scalar.exec(text) ?? [];
  return word === undefined ? { at, expected: awaited } : { ...whole, at: at + word.length };
}

const closed = ({ at, open }: Place): Place => {
  const left = open.slice(0, -1);
  return { at: at + 1, awaited: afterValue(left), open: left };
};

function afterValue(open: string): Awaited {
  if (open === "") return "nothing more";
  return open.endsWith("[") ? "a comma or ]" : "a comma or }";
}

const escaped = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** The place after a text in quotes, or the character at which it is none. */
function afterText(text: string, from: number, whole: Place): Place | Break {
  let at = from + 1;
  while (at < text.length) {
    const mark = text.charAt(at);
    if (mark === '"') return { ...whole, at: at + 1 };
    if (mark < " ") return { at, expected: "no line end and no control character in a text" };
    escaped.lastIndex = at;
    const [one] = mark === "\\" ? (escaped.exec(text) ?? []) : [mark];
    if (one === undefined) return { at, expected: "an escape that JSON has" };
    at += one.length;
  }
  return { at, expected: "the end of a text, a quotation mark" };
}

function located(text: string, { at, expected }: Break): JsonFault {
  const lines = text.slice(0, at).split("\n");
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1, expected };
}

/** Where something stands in a case: keys and places in lists, from the outside in. */
export type Path = readonly (string | number)[];

/** What is wrong with a case, where, and what was expected instead. */
export interface Problem {
  readonly path: Path;
  readonly expected: string;
  /** What stands there; left out where nothing does. */
  readonly found?: unknown;
}

/** A JSON pointer (RFC 6901); the whole of a case is ''. */
export const pointer = (path: Path): string =>
  path.map((key) => `/${String(key).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");

const longest = 60;

/** So much of a value as a line has room for. */
function brief(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "an object";
  const text = typeof value === "string" ? JSON.stringify(value) : String(value);
  return text.length > longest ? `${text.slice(0, longest)}…` : text;
}

/** A problem in one line, its pointer first. */
export const problemText = ({ path, expected, found }: Problem): string => {
  const where = path.length === 0 ? "the case" : pointer(path);
  const instead = found === undefined ? "" : `, found ${brief(found)}`;
  return `${printable(where)}: expected ${printable(expected + instead)}`;
};

/** No control characters: a name out of a file must not steer a terminal, nor begin a line. */
export const printable = (text: string): string =>
  text.replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu, "\uFFFD");

/** 'One of a, b', or that there is none. */
export const oneOf = (
  names: readonly string[],
  none = "nothing here, since there is none",
): string => (names.length === 0 ? none : `one of ${names.join(", ")}`);

/** What the core threw at a rig that looked sound: a limit of its own. */
export const unworkable = (path: Path, error: unknown): Problem => ({
  path,
  expected: `a rig that can be worked out (${messageOf(error)})`,
});

/** What an error says. */
export const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

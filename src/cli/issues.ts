import type { z } from "zod";
import type { Path, Problem } from "./problem.ts";

type Issue = z.core.$ZodIssue;

/** What the schema library found amiss, each with its path and what was expected. */
export const problemsOf = (value: unknown, error: z.core.$ZodError): readonly Problem[] =>
  error.issues
    .flatMap((issue) => flat(issue))
    .map(({ path, expected }) => {
      const found = at(value, path);
      return { path, expected, ...(found === undefined ? {} : { found }) };
    });

interface Flat {
  readonly path: Path;
  readonly expected: string;
}

const flat = (issue: Issue, above: Path = []): readonly Flat[] => {
  const path = [...above, ...issue.path.map((key) => (typeof key === "symbol" ? "" : key))];
  return issue.code === "invalid_union" && issue.errors.length > 0
    ? nearest(issue.errors.map((one) => one.flatMap((inner) => flat(inner, path))))
    : [{ path, expected: expectedBy(issue) }];
};

/** Of several ways to read a value: the one that its check is of; and else what they expect where they got furthest. */
function nearest(ways: readonly (readonly Flat[])[]): readonly Flat[] {
  const told = ways.filter((way) => !way.some(({ path }) => path.at(-1) === "check"));
  if (told.length === 1) return told[0] ?? [];
  const firsts = (told.length > 0 ? told : ways).flatMap(([first]) => first ?? []);
  const [path = []] = firsts.map((one) => one.path).sort((a, b) => b.length - a.length);
  const same = firsts.filter((one) => one.path.join("/") === path.join("/"));
  return [{ path, expected: [...new Set(same.map(({ expected }) => expected))].join(" or ") }];
}

const words = (values: readonly unknown[]): string =>
  values.map((one) => (typeof one === "string" ? JSON.stringify(one) : String(one))).join(", ");

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return kinds[issue.expected] ?? issue.expected;
    case "invalid_value":
      return words(issue.values);
    case "invalid_union":
      return "options" in issue ? words(issue.options ?? []) : issue.message;
    case "too_small":
      return issue.origin === "array"
        ? `${issue.minimum} in this list`
        : `${issue.minimum} or more`;
    case "too_big":
      return issue.origin === "array"
        ? `${issue.maximum} in this list`
        : `${issue.maximum} or less`;
    default:
      return issue.message;
  }
}

const kinds: Readonly<Record<string, string>> = {
  object: "an object",
  array: "a list",
  tuple: "a list",
  record: "an object",
  string: "a text",
  number: "a number",
  boolean: "true or false",
};

function at(value: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (inside, key) =>
      typeof inside === "object" && inside !== null && Object.hasOwn(inside, key)
        ? (inside as Readonly<Record<string | number, unknown>>)[key]
        : undefined,
    value,
  );
}

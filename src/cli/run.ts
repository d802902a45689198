import { derive } from "#core/index.ts";
import { type Asking, askingOf, usage } from "./command-line.ts";
import { diagnosisOf } from "./diagnosis-result.ts";
import type { Printed } from "./print.ts";
import { oneOf, type Path, pointer, printable, problemText, unworkable } from "./problem.ts";
import { type ReadCase, readCase } from "./read-case.ts";
import { textOf } from "./text.ts";

/** The text of a file, or why there is none. */
export type Input = { readonly text: string } | { readonly missing: string };

/** The whole command, but for the file itself. Where it ends with 2, it prints nothing but why. */
export async function run(
  args: readonly string[],
  read: (file: string) => Promise<Input>,
): Promise<Printed> {
  const asking = askingOf(args);
  if (asking === "help") return { code: 0, out: `${usage}\n`, err: "" };
  if ("wrong" in asking) return refusal(asking.wrong, "", usage);
  const input = await read(asking.file);
  return "missing" in input ? refusal(input.missing) : answer(asking, readCase(input.text));
}

const refusal = (...lines: readonly string[]): Printed => ({
  code: 2,
  out: "",
  err: `${lines.join("\n")}\n`,
});

function answer(asking: Asking, found: ReadCase): Printed {
  if (!found.read) return refusal(...found.lines);
  const unknown = warnings(found.unknown, "nobody knows this key; it is kept");
  if (asking.as === "echo") return { code: 0, out: json(found.whole), err: unknown };
  const derived = derive(found.log);
  if (derived === undefined) throw new Error("a case was read without a drawing");
  const leftOut = found.placed.filter(({ entry }) => derived.leftOut.includes(entry));
  const gone = "this speaks of what is no longer drawn; it is left out";
  const err = `${unknown}${warnings(
    leftOut.map(({ at }) => at),
    gone,
  )}`;
  const ids = derived.rig.positions.map(({ id }) => id);
  const { position } = asking;
  if (position !== undefined && !ids.includes(position))
    return refusal(`--position: expected ${printable(oneOf(ids))}`);
  try {
    const diagnosis = diagnosisOf(derived, position === undefined ? ids : [position]);
    const out = asking.as === "text" ? `${textOf(diagnosis)}\n` : json(diagnosis);
    return { code: 0, out, err };
  } catch (error) {
    return refusal(problemText(unworkable([], error)));
  }
}

const warnings = (paths: readonly Path[], what: string): string =>
  paths.map((path) => `${printable(pointer(path))}: warning: ${what}\n`).join("");

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

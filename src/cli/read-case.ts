import type { Log, Rig } from "#core/index.ts";
import { caseFormatName, caseVersion } from "#core/session/case.ts";
import { modelFor } from "#core/session/derive.ts";
import { holding } from "#core/session/log.ts";
import { type Case, type CaseEntry, caseFormat } from "./case-format.ts";
import { problemsOf } from "./issues.ts";
import { jsonFault } from "./json-fault.ts";
import { idProblems, logProblems, type Placed } from "./log-problems.ts";
import { type Path, type Problem, problemText, unworkable } from "./problem.ts";
import { rigProblems } from "./rig-problems.ts";
import { unknownKeys, unreadIn } from "./unknown-keys.ts";

/** A case as it was read, or why not, in lines. */
export type ReadCase =
  | {
      readonly read: true;
      /** Everything that stands there, unknown keys included. */
      readonly whole: unknown;
      readonly log: Log;
      /** Where each entry stands. */
      readonly placed: readonly Placed[];
      /** Where there are keys that nobody knows. */
      readonly unknown: readonly Path[];
    }
  | { readonly read: false; readonly lines: readonly string[] };

const refused = (...lines: readonly string[]): ReadCase => ({ read: false, lines });
const withProblems = (problems: readonly Problem[]): ReadCase =>
  refused(...problems.map(problemText));

/** Reads the text of a case file. */
export function readCase(text: string): ReadCase {
  const fault = jsonFault(text);
  if (fault !== undefined)
    return refused(`line ${fault.line}, column ${fault.column}: expected ${fault.expected}`);
  const whole: unknown = JSON.parse(text);
  const other = otherFormat(whole);
  if (other !== undefined) return withProblems([other]);
  const { data, error } = caseFormat.safeParse(whole);
  if (data === undefined) return withProblems(problemsOf(whole, error));
  const placed = placedIn(data);
  const drawing = drawingIn(placed);
  const problems = problemsIn(placed, drawing);
  if (problems.length > 0 || drawing === undefined) return withProblems(problems);
  return {
    read: true,
    whole,
    log: placed.map(({ entry }) => entry),
    placed,
    unknown: [...unknownKeys(whole, data), ...unreadIn(drawing.rig, drawing.at)],
  };
}

/** A file of another sort, or of another version of this one, is not read any further. */
function otherFormat(whole: unknown): Problem | undefined {
  if (typeof whole !== "object" || whole === null || !("format" in whole)) return undefined;
  const { format } = whole;
  if (format !== caseFormatName)
    return { path: ["format"], expected: JSON.stringify(caseFormatName), found: format };
  const version = "version" in whole ? whole.version : undefined;
  return version === caseVersion
    ? undefined
    : {
        path: ["version"],
        expected: `${caseVersion}, the version that this program reads`,
        found: version,
      };
}

/** The log as the core has it: the rig's drawing first, and ids, times and what was seen filled in. */
function placedIn({ rig, log }: Case): readonly Placed[] {
  const drawing: CaseEntry[] = rig === undefined ? [] : [{ entry: "drawing", rig, id: "0" }];
  const all = [...drawing, ...log];
  const placed: Placed[] = [];
  for (const [index, entry] of all.entries()) {
    const last = placed.at(-1)?.entry;
    const place = index - drawing.length;
    const seen = entry.seen ?? last?.id;
    placed.push({
      entry: {
        ...entry,
        id: entry.id ?? String(place + 1),
        at: entry.at ?? last?.at ?? 0,
        ...(seen === undefined ? {} : { seen }),
      },
      at: place < 0 ? [] : ["log", place],
    });
  }
  return placed;
}

/** The rig that holds, and where it stands in the case. */
interface Drawing {
  readonly rig: Rig;
  readonly at: Path;
}

function drawingIn(placed: readonly Placed[]): Drawing | undefined {
  const held = new Set(holding(placed.map(({ entry }) => entry)));
  const last = placed.findLast(({ entry }) => entry.entry === "drawing" && held.has(entry));
  return last?.entry.entry === "drawing"
    ? { rig: last.entry.rig, at: [...last.at, "rig"] }
    : undefined;
}

/** Everything that is amiss with the ids, else with the rig that holds, else with what the log says of it. */
function problemsIn(placed: readonly Placed[], drawing: Drawing | undefined): readonly Problem[] {
  const ids = idProblems(placed);
  if (ids.length > 0) return ids;
  if (drawing === undefined)
    return [{ path: ["rig"], expected: "a rig, here or as a drawing in the log" }];
  const amiss = rigProblems(drawing.rig, drawing.at);
  if (amiss.length > 0) return amiss;
  try {
    return logProblems(modelFor(drawing.rig).model, placed);
  } catch (error) {
    return [unworkable(drawing.at, error)];
  }
}

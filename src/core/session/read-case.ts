import { type About, caseBegins, caseFormatName, caseVersion, deepest } from "./case.ts";
import type { Log } from "./log.ts";
import { isDrawn, type Mended, mendedLog } from "./mended.ts";

/** Why a file is refused. */
const refusals = [
  "empty",
  "not JSON",
  "cut off",
  "too deep",
  "no session",
  "another format",
  "a newer version",
  "no log",
  "no rig",
] as const;
export type Refusal = (typeof refusals)[number];

/** A session out of a file, mended where it was broken, or why there is none. */
export type ReadFile =
  | {
      readonly read: true;
      readonly log: Log;
      /** Left out where the file says nothing of it. */
      readonly about?: About;
      readonly lost: Mended["lost"];
      /** The end of the file is missing. */
      readonly cutOff: boolean;
    }
  | { readonly read: false; readonly why: Refusal };

/**
 * Reads the text of a session's file, of any version there ever was: a case, or the bare log that an older program kept. What cannot be
 * understood is left out and named; what names things that are not drawn stays, and says nothing (`leftOut`). Throws on nothing.
 */
export function readFile(text: string): ReadFile {
  if (text.trim() === "") return refused("empty");
  const whole = parsed(text);
  if (whole === undefined) return refused(isCutInRig(text) ? "cut off" : "not JSON");
  const { value, cutOff } = whole;
  if (isTooDeep(value)) return refused("too deep");
  const entries = entriesIn(value);
  if (typeof entries === "string") return refused(entries);
  const { log, lost } = mendedLog(entries);
  if (!isDrawn(log)) return refused("no rig");
  return {
    read: true,
    log,
    lost,
    cutOff,
    ...aboutIn(value),
  };
}

const refused = (why: Refusal): ReadFile => ({ read: false, why });

type Fields = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What stands there; of a file that was cut off, as far as its last whole entry. */
function parsed(text: string): { readonly value: unknown; readonly cutOff: boolean } | undefined {
  const value = json(text);
  if (value !== undefined) return { value, cutOff: false };
  const end = text.lastIndexOf("},\n");
  const begun = end < 0 ? "" : text.slice(0, end + 1);
  const cut = json(`${begun}]}`) ?? json(`${begun}]`);
  return cut === undefined ? undefined : { value: cut, cutOff: true };
}

function json(text: string): unknown {
  try {
    return JSON.parse(unmarked(text));
  } catch {
    return undefined;
  }
}

/** Without the mark that some editors set before everything. */
const unmarked = (text: string): string => text.replace(/^\uFEFF/, "");

/** A session's file that ends before its first entry does, which says what the rig is. */
const isCutInRig = (text: string): boolean =>
  unmarked(text).startsWith(caseBegins) && !text.includes("},\n") && !text.includes("\n]}");

/** Deeper than what is read, and so deep perhaps that nothing which goes from bracket to bracket comes to its end. */
function isTooDeep(value: unknown): boolean {
  let brackets = [value].filter(isBracket);
  for (let depth = 1; depth <= deepest && brackets.length > 0; depth++)
    brackets = brackets.flatMap((one) => Object.values(one)).filter(isBracket);
  return brackets.length > 0;
}

const isBracket = (value: unknown): value is object => typeof value === "object" && value !== null;

/** The entries, the rig of a case as the first of them; or what is amiss. */
function entriesIn(value: unknown): readonly unknown[] | Refusal {
  if (Array.isArray(value)) return value;
  if (!isObject(value)) return "no session";
  const { rig, log } = value;
  const other = otherFormat(value);
  if (other !== undefined) return other;
  if (!Array.isArray(log)) return "no log";
  return rig === undefined ? log : [{ entry: "drawing", rig, id: "0" }, ...numbered(log)];
}

/** Why it is no case, or none that this program knows. */
function otherFormat({ format, version, log }: Fields): Refusal | undefined {
  if (format === undefined && log === undefined) return "no session";
  if (format !== caseFormatName) return "another format";
  if (version === caseVersion) return undefined;
  return typeof version === "number" && version > caseVersion ? "a newer version" : "no session";
}

/** Without ids of their own, entries behind a rig are counted from one. */
const numbered = (log: readonly unknown[]): readonly unknown[] =>
  log.map((one, index) => (isObject(one) ? { id: String(index + 1), ...one } : one));

function aboutIn(value: unknown): { readonly about?: About } {
  if (!isObject(value) || !isObject(value.session)) return {};
  const { id, written, bench } = value.session;
  if (typeof id !== "string" || typeof written !== "number") return {};
  return {
    about: { id, written, ...(Number.isSafeInteger(bench) ? { bench: bench as number } : {}) },
  };
}

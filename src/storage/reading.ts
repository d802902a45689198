import { earChecks } from "#core/checks/check.ts";
import { chainTo } from "#core/rig/chain.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import type { Entry, Log } from "#core/session/log.ts";

/** A log from its text, or nothing where any of it cannot be understood. Throws on nothing. */
export function readLog(text: string): Log | undefined {
  try {
    const data: unknown = JSON.parse(text);
    return Array.isArray(data) && data.every(isEntry) ? data : undefined;
  } catch {
    return undefined;
  }
}

type Fields = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Fields => typeof value === "object" && value !== null;
const isText = (value: unknown): value is string => typeof value === "string";
const hasTexts = (value: unknown, ...names: readonly string[]): value is Fields =>
  isObject(value) && names.every((name) => isText(value[name]));
const areAll = (value: unknown, is: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(is);

function isEntry(value: unknown): value is Entry {
  if (!hasTexts(value, "id", "entry") || typeof value.at !== "number") return false;
  if (value.seen !== undefined && !isText(value.seen)) return false;
  const is = said[String(value.entry)];
  return is?.(value) ?? false;
}

/** For each kind of entry, whether what it says is whole. */
const said: Readonly<Record<string, (value: Fields) => boolean>> = {
  drawing: ({ rig }) => isRig(rig) && leadsSomewhere(rig),
  move: ({ move }) =>
    hasTexts(move, "move", "place") && (move.move === "set right" || move.move === "replaced"),
  finding: ({ finding }) =>
    isObject(finding) &&
    isAsked(finding.asked) &&
    areAll(finding.results, (given) => areAll(given, isText)),
  "taken back": ({ taken }) => isText(taken),
};

const isAsked = (value: unknown): boolean =>
  hasTexts(value, "check") &&
  (value.check === "look"
    ? isText(value.place)
    : atPosition.some((name) => name === value.check) && isText(value.position));

/** What is asked of somebody at a position. */
const atPosition: readonly string[] = [...earChecks, "complaint"];

const isRig = (value: unknown): value is Rig =>
  hasTexts(value, "name") &&
  areAll(value.parts, (part) => hasTexts(part, "id", "kind")) &&
  areAll(value.plugged, (end) => hasTexts(end, "part", "plug", "into", "socket")) &&
  areAll(value.positions, (position) => hasTexts(position, "id", "name", "wears"));

/** Whether every position hangs from something. A rig of an older program may name parts that there are no more. */
function leadsSomewhere(rig: Rig): boolean {
  try {
    const built = build(rig);
    return (
      rig.positions.length > 0 && rig.positions.every(({ id }) => chainTo(built, id).length > 1)
    );
  } catch {
    return false;
  }
}

import { earChecks } from "#core/checks/check.ts";
import { bends } from "#core/checks/finding.ts";
import { chainTo } from "#core/rig/chain.ts";
import type { Move } from "#core/rig/moves.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import type { Entry } from "./log.ts";

type Fields = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Fields => typeof value === "object" && value !== null;
const isText = (value: unknown): value is string => typeof value === "string";
const hasTexts = (value: unknown, ...names: readonly string[]): value is Fields =>
  isObject(value) && names.every((name) => isText(value[name]));
const areAll = (value: unknown, is: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(is);

/** Whether an entry can be understood: whole, and of a kind that is known. */
export function isEntry(value: unknown): value is Entry {
  if (!hasTexts(value, "id", "entry") || typeof value.at !== "number") return false;
  if (value.seen !== undefined && !isText(value.seen)) return false;
  const is = said[String(value.entry)];
  return is?.(value) ?? false;
}

/** For each kind of entry, whether what it says is whole. */
const said: Readonly<Record<string, (value: Fields) => boolean>> = {
  drawing: ({ rig }) => isRig(rig) && leadsSomewhere(rig),
  move: ({ move }) => isMove(move),
  cannot: ({ move }) => isMove(move),
  finding: ({ finding, level }) => isFinding(finding) && (level === undefined || isNumber(level)),
  absent: ({ position }) => isText(position),
  titled: ({ name, who }) => [name, who].every((text) => text === undefined || isText(text)),
  "taken back": ({ taken }) => isText(taken),
};

const isNumber = (value: unknown): value is number =>
  typeof value === "number" && Number.isFinite(value);
const areTwoTexts = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every(isText);

/** For each kind of move, whether what it names is whole. */
const moves: Readonly<Record<Move["move"], (move: Fields) => boolean>> = {
  "set right": (move) => hasTexts(move, "place"),
  replaced: (move) => hasTexts(move, "place"),
  "plugged anew": (move) => hasTexts(move, "part", "plug"),
  exchanged: ({ parts }) => areTwoTexts(parts),
  "known good in": (move) => hasTexts(move, "part"),
  "put back": (move) => hasTexts(move, "part"),
  moved: (move) => hasTexts(move, "part", "plug", "into", "socket"),
  "turned round": (move) => hasTexts(move, "position"),
  set: (move) => hasTexts(move, "part", "control") && isNumber(move.value),
};

const isMove = (value: unknown): boolean => {
  if (!hasTexts(value, "move")) return false;
  const whole = Object.entries(moves).find(([name]) => name === value.move)?.[1];
  return whole?.(value) ?? false;
};

const areResults = (value: unknown): boolean => areAll(value, (given) => areAll(given, isText));

function isFinding(value: unknown): boolean {
  if (!isObject(value)) return false;
  const { asked, results, otherTimes } = value;
  if (!hasTexts(asked, "check")) return false;
  if (asked.check === "continuity") return hasTexts(asked, "part", "from", "to") && isRead(value);
  if (asked.check === "matrix") return hasTexts(asked, "position") && isMeasured(value);
  return (
    isAsked(asked) && areResults(results) && (otherTimes === undefined || areResults(otherTimes))
  );
}

/** What a meter showed. */
const isRead = ({ ohms, bent }: Fields): boolean =>
  (ohms === undefined || isNumber(ohms)) &&
  (bent === undefined || bends.some((word) => word === bent));

/** What was measured. */
const isMeasured = ({ gains, error, level }: Fields): boolean =>
  areGains(gains) && isNumber(error) && (level === undefined || level === "as it comes");

/** Four complex numbers. */
const areGains = (value: unknown): boolean =>
  Array.isArray(value) &&
  value.length === 4 &&
  value.every((one) => Array.isArray(one) && one.length === 2 && one.every(isNumber));

/** What a person was asked. */
function isAsked(asked: Fields): boolean {
  if (asked.check === "look") return isText(asked.place);
  if (asked.check === "twist") return hasTexts(asked, "part", "plug");
  return atPosition.some((name) => name === asked.check) && isText(asked.position);
}

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

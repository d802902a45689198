import { earChecks } from "#core/checks/check.ts";
import { bends } from "#core/checks/finding.ts";
import { noises, trialNames } from "#core/checks/noise.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Entry, Said } from "./log.ts";
import {
  areAll,
  type Fields,
  hasTexts,
  isMaybe,
  isNumber,
  isObject,
  isText,
} from "./reading-fields.ts";
import { isRig } from "./reading-rig.ts";

/** Whether an entry can be understood: whole, and of a kind that is known. */
export function isEntry(value: unknown): value is Entry {
  if (!hasTexts(value, "id", "entry") || !isTime(value.at)) return false;
  return isMaybe(value.seen, isText) && isWhole(said, String(value.entry), value);
}

/** The farthest from 1970 that a date reaches, ms (ECMAScript, 'Time Values and Time Range'). */
const farthest = 8.64e15;

const isTime = (value: unknown): boolean => isNumber(value) && Math.abs(value) <= farthest;

type Whole = Readonly<Record<string, (value: Fields) => boolean>>;

/** Whether something of a kind that is known is whole. A name such as 'constructor' is none of ours. */
const isWhole = (kinds: Whole, kind: string, value: Fields): boolean =>
  Object.hasOwn(kinds, kind) && kinds[kind]?.(value) === true;

/** For each kind of entry, whether what it says is whole. */
const said: Readonly<Record<Said["entry"], (value: Fields) => boolean>> = {
  drawing: ({ rig }) => isRig(rig),
  move: ({ move }) => isMove(move),
  cannot: ({ move }) => isMove(move),
  finding: ({ finding, level }) => isFinding(finding) && isMaybe(level, isNumber),
  absent: ({ position }) => isText(position),
  titled: ({ name, who }) => [name, who].every((text) => isMaybe(text, isText)),
  "taken back": ({ taken }) => isText(taken),
};

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

const isMove = (value: unknown): boolean =>
  hasTexts(value, "move") && isWhole(moves, String(value.move), value);

const areResults = (value: unknown): boolean => areAll(value, (given) => areAll(given, isText));

function isFinding(value: unknown): boolean {
  if (!isObject(value)) return false;
  const { asked, results, otherTimes } = value;
  if (!hasTexts(asked, "check")) return false;
  const byInstrument = results === undefined && otherTimes === undefined;
  if (asked.check === "continuity")
    return byInstrument && hasTexts(asked, "part", "from", "to") && isRead(value);
  if (asked.check === "matrix")
    return byInstrument && hasTexts(asked, "position") && isMeasured(value);
  if (asked.check === "noise")
    return isOfNoise(asked) && areResults(results) && otherTimes === undefined;
  return isAsked(asked) && areResults(results) && isMaybe(otherTimes, areResults);
}

/** Nothing, or more of it. */
const isNoLess = (value: unknown): boolean => isNumber(value) && value >= 0;

/** What a meter showed. */
const isRead = ({ ohms, bent }: Fields): boolean =>
  isMaybe(ohms, isNoLess) && isMaybe(bent, (one) => bends.some((word) => word === one));

/** What was measured. */
const isMeasured = ({ gains, error, level }: Fields): boolean =>
  areGains(gains) && isNoLess(error) && isMaybe(level, (one) => one === "as it comes");

/** Four complex numbers. */
const areGains = (value: unknown): boolean =>
  Array.isArray(value) &&
  value.length === 4 &&
  value.every((one) => Array.isArray(one) && one.length === 2 && one.every(isNumber));

/** What was tried against a noise, where. */
const isOfNoise = ({ position, noise, trial }: Fields): boolean =>
  isText(position) && noises.some((one) => one === noise) && isTrial(trial);

function isTrial(value: unknown): boolean {
  if (!hasTexts(value, "try")) return false;
  if (value.try === "elsewhere") return isText(value.position);
  const names: Readonly<Record<string, readonly string[]>> = trialNames;
  const wanted = Object.hasOwn(names, String(value.try)) ? names[String(value.try)] : undefined;
  return wanted !== undefined && hasTexts(value, ...wanted);
}

/** What a person was asked. */
function isAsked(asked: Fields): boolean {
  if (asked.check === "look") return isText(asked.place);
  if (asked.check === "twist") return hasTexts(asked, "part", "plug");
  return atPosition.some((name) => name === asked.check) && isText(asked.position);
}

/** What is asked of somebody at a position. */
const atPosition: readonly string[] = [...earChecks, "complaint"];

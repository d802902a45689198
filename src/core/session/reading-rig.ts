import { type Rig, wantedFeeds } from "#core/rig/rig.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import {
  areAll,
  type Fields,
  hasTexts,
  isMaybe,
  isNumber,
  isObject,
  isText,
  isTruth,
} from "./reading-fields.ts";

/** Whether it is a rig: every part of it whole, and one that can be built, in which every position hangs from something. */
export const isRig = (value: unknown): value is Rig => isShapedSo(value) && canBe(value);

const isShapedSo = (value: unknown): value is Rig =>
  hasTexts(value, "name") &&
  areAll(value.parts, isPart) &&
  areAll(value.plugged, isEnd) &&
  areAll(value.positions, isPosition);

const isPart = (part: unknown): boolean =>
  hasTexts(part, "id", "kind") &&
  isMaybe(part.first, isText) &&
  isMaybe(part.settings, (all) => areAllIn(all, (one) => isNumber(one) || isText(one))) &&
  isMaybe(part.controls, (all) => areAllIn(all, isNumber)) &&
  isMaybe(part.good, isTruth) &&
  isMaybe(part.untried, (times) => isNumber(times) && times >= 1);

const isEnd = (end: unknown): boolean =>
  hasTexts(end, "part", "plug", "into", "socket") && isMaybe(end.sure, isTruth);

const isPosition = (position: unknown): boolean =>
  hasTexts(position, "id", "name", "wears") &&
  isMaybe(position.turned, isTruth) &&
  isMaybe(position.wants, (wants) => wantedFeeds.some((one) => one === wants));

const areAllIn = (value: unknown, is: (one: unknown) => boolean): value is Fields =>
  isObject(value) && !Array.isArray(value) && Object.values(value).every(is);

/** A rig of an older program may name parts that there are no more, at which the catalogue throws. */
function canBe(rig: Rig): boolean {
  try {
    return rigTroubles(rig).length === 0;
  } catch {
    return false;
  }
}

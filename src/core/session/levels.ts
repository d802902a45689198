import { offCentre } from "#core/checks/balance.ts";
import { isAnswered, type Measured } from "#core/checks/finding.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";
import type { Entry, Log } from "./log.ts";

/** What the last findings at a position say of levels; what nobody measured is left out. */
export interface Levels {
  /** At the ear, of its own side, against a healthy chain. */
  readonly left?: Decibels;
  readonly right?: Decibels;
  /** By how much the right is louder than the left. */
  readonly balance?: Decibels;
  /** Of the test signal as it was answered last. */
  readonly played?: Decibels;
}

type Found = Extract<Entry, { entry: "finding" }>;

/** What the entries that hold say of levels at a position. */
export function levelsAt(entries: Log, position: string): Levels {
  const here = entries.filter(
    (one): one is Found =>
      one.entry === "finding" &&
      "position" in one.finding.asked &&
      one.finding.asked.position === position,
  );
  const measured = here.flatMap(({ finding }) => (isMeasured(finding) ? [finding] : [])).at(-1);
  const played = here.findLast(({ level }) => level !== undefined)?.level;
  const ears = measured && atEars(measured);
  const balance = ears === undefined ? pushed(here) : difference(ears.left, ears.right);
  return {
    ...(measured?.level === undefined ? ears : {}),
    ...(balance === undefined ? {} : { balance }),
    ...(played === undefined ? {} : { played }),
  };
}

const isMeasured = (finding: Found["finding"]): finding is Measured =>
  finding.asked.check === "matrix";

/** A gain that is not clear of what the measurement is sure of is no level. */
function atEars({ gains: [ll, , , rr], error }: Measured): Pick<Levels, "left" | "right"> {
  const level = ([re, im]: readonly [number, number]): Decibels | undefined => {
    const size = Math.hypot(re, im);
    return size > 3 * error ? toDecibels(size) : undefined;
  };
  const [left, right] = [level(ll), level(rr)];
  return {
    ...(left === undefined ? {} : { left }),
    ...(right === undefined ? {} : { right }),
  };
}

const difference = (left?: Decibels, right?: Decibels): Decibels | undefined =>
  left === undefined || right === undefined ? undefined : right - left;

/** By ear: a right side that was pushed up by so much was so much softer. */
function pushed(here: readonly Found[]): Decibels | undefined {
  const last = here.findLast(({ finding }) => finding.asked.check === "balance")?.finding;
  if (last === undefined || !isAnswered(last)) return undefined;
  const up = (last.results[0] ?? []).map(offCentre);
  const known = up.filter((one) => one !== undefined);
  if (known.length === 0 || known.length < up.length || known.length > 2) return undefined;
  return -known.reduce((sum, one) => sum + one, 0) / known.length;
}

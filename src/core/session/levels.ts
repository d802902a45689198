import { neverCentred, rightUp } from "#core/checks/balance.ts";
import { type Finding, isAnswered, type Measured } from "#core/checks/finding.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, DecibelsFullScale } from "#core/units/units.ts";
import type { Derived } from "./derive.ts";

/** What findings at a position say of levels; what nobody found is left out. */
export interface Levels {
  /** Of the test signal as it was answered last. */
  readonly played?: DecibelsFullScale;
  /** By how much the right had to be made louder to be in the middle, on the way as it is now; or it never was there. */
  readonly pushed?: Decibels | "never";
  /** What was measured last of the way as it is now. */
  readonly measured?: Measured;
}

/** What was found of levels at a position. Once something on the way was touched, what was found before it says nothing of balance and ears. */
export function levelsAt(derived: Derived, position: string): Levels {
  const here = foundAt(derived, position);
  const now = here.filter((one) => one.now).map(({ finding }) => finding);
  const played = here.findLast(({ level }) => level !== undefined)?.level;
  const pushed = pushedIn(now);
  const measured = now.findLast(isMeasured);
  return {
    ...(played === undefined ? {} : { played }),
    ...(pushed === undefined ? {} : { pushed }),
    ...(measured === undefined ? {} : { measured }),
  };
}

interface FoundHere {
  readonly finding: Finding;
  readonly level: DecibelsFullScale | undefined;
  /** It speaks of the way as it is now. */
  readonly now: boolean;
}

function foundAt({ told, evidence }: Derived, position: string): readonly FoundHere[] {
  const found: FoundHere[] = [];
  let epoch = 0;
  for (const { entry, happening } of told) {
    if (happening.kind === "move") epoch++;
    if (happening.kind !== "finding") continue;
    const { finding } = happening;
    if (!("position" in finding.asked) || finding.asked.position !== position) continue;
    const level = entry.entry === "finding" ? entry.level : undefined;
    const now = evidence.era.channelAt(position, epoch) === evidence.nowAt(position);
    found.push({ finding, level, now });
  }
  return found;
}

const isMeasured = (finding: Finding): finding is Measured => finding.asked.check === "matrix";

/** By ear, as it was answered last. */
function pushedIn(findings: readonly Finding[]): Levels["pushed"] {
  const last = findings.findLast(({ asked }) => asked.check === "balance");
  if (last === undefined || !isAnswered(last)) return undefined;
  const [answers = []] = last.results;
  return answers.length === 1 && answers[0] === neverCentred ? "never" : rightUp(answers);
}

/** What arrives at each ear of its own side, against a healthy chain. */
export interface Ears {
  readonly left?: Decibels;
  readonly right?: Decibels;
}

/** What was measured at each ear; a gain that is not clear of what the measurement is sure of is no level. */
export function earsIn({ gains: [ll, , , rr], error }: Measured): Ears {
  const level = ([re, im]: readonly [number, number]): Decibels | undefined => {
    const size = Math.hypot(re, im);
    return size > clear * error ? toDecibels(size) : undefined;
  };
  const [left, right] = [level(ll), level(rr)];
  return {
    ...(left === undefined ? {} : { left }),
    ...(right === undefined ? {} : { right }),
  };
}

/** So many standard deviations above nothing: by chance one in 370 is farther off (of a normal distribution). The choice is common practice, no source. */
const clear = 3;

/** By how much the right is louder than the left: as measured, else by ear, where what was pushed up by so much was so much softer. */
export function balanceIn({ measured, pushed }: Levels): Decibels | undefined {
  if (measured === undefined) return typeof pushed === "number" ? -pushed : undefined;
  const { left, right } = earsIn(measured);
  return left === undefined || right === undefined ? undefined : right - left;
}

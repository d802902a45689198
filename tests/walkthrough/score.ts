import { shownIn } from "#core/diagnosis/advice.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { Walked } from "./walk.ts";

/** A fault that was planted, and how the walk went. */
export interface Found {
  readonly fault: RigFault;
  readonly group: Group;
  readonly walked: Walked;
}

/**
 * Where the planted fault's group stands among those shown, from zero; minus one where it is not. A fault that a move has mended on the way, or
 * that the one repair now proposed mends, is found as well: that is what ends the trouble.
 */
function rank({ fault, walked }: Found): number {
  const { derived, position, end, mended } = walked;
  if (mended) return 0;
  if (end === "healthy") return -1;
  const standing = derived.standing(position);
  const doing = standing.choice?.best?.doing;
  const { rig } = derived.evidence.era.course.state;
  if (end === "unsure" && doing?.do === "mend" && staying(fault, doing.move, rig) === 0) return 0;
  return shownIn(standing).findIndex(({ group }) => group.faults.includes(fault));
}

const chance = ({ fault, walked }: Found): number =>
  walked.derived
    .standing(walked.position)
    .suspects.find(({ group }) => group.faults.includes(fault))?.probability ?? 0;

export function score(found: readonly Found[]) {
  const weight = found.reduce((sum, { fault }) => sum + fault.weight, 0);
  const first = found.filter((one) => rank(one) === 0);
  const by = (some: readonly Found[], value: (one: Found) => number) =>
    some.reduce((sum, one) => sum + one.fault.weight * value(one), 0) / weight;
  return {
    count: found.length,
    shown: found.filter((one) => rank(one) >= 0).length,
    firstByWeight: by(first, () => 1),
    firstByCount: first.length / found.length,
    checksByWeight: by(found, ({ walked }) => walked.checks),
    secondsByWeight: by(found, ({ walked }) => walked.seconds),
    mendedByWeight: by(
      found.filter(({ walked }) => walked.mended),
      () => 1,
    ),
  };
}

/** Fault, its group's size, checks, verdict, how sure. */
export const table = (found: readonly Found[]): string =>
  found
    .map((one) => {
      const { fault, group, walked } = one;
      const verdict = rank(one) === 0 ? walked.end : `${walked.end}, MISSED`;
      const sure = `${(100 * chance(one)).toFixed(1)} %`;
      return `${fault.id.padEnd(58)} ${String(group.faults.length).padStart(2)} ${String(walked.checks).padStart(3)}  ${verdict.padEnd(16)} ${sure}`;
    })
    .join("\n");

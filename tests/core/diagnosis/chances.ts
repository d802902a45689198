import type { EarCheckName } from "#core/checks/check.ts";
import type { Happening } from "#core/checks/finding.ts";
import { beliefsOf } from "#core/diagnosis/beliefs.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";

/** Three seats at one amplifier. */
export const rig = fromHeadphoneSocket("three", ["one", "two", "three"]);

/** What was answered at a seat. */
export const heard = (position: string, check: EarCheckName, ...answers: string[]): Happening => ({
  kind: "finding",
  finding: { asked: { check, position }, results: answers.map((one) => [one]) },
});
export const moved = (move: Move): Happening => ({ kind: "move", move });

/** How likely each fault of a rig is to be there now; of the three seats where no other is given. */
export function chances(
  happenings: readonly Happening[],
  of: Rig = rig,
): ReadonlyMap<string, number> {
  const { model } = modelFor(of);
  const beliefs = beliefsOf(model, evidenceOf(model, happenings));
  const found = new Map<string, number>();
  for (const branch of beliefs.era.branches) {
    const { faults, probabilities } = beliefs.sets(branch);
    const each = faults.flatMap((set, at) => set.map(({ id }) => [id, probabilities[at]] as const));
    for (const [id, p = 0] of each) found.set(id, (found.get(id) ?? 0) + p);
  }
  return found;
}

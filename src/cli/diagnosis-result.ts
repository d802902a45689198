import { shownIn } from "#core/diagnosis/advice.ts";
import { type Derived, english } from "#core/index.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { neverTestedAt } from "#core/report/never-tested.ts";
import { askedIn } from "#core/session/noises.ts";
import {
  type Diagnosis,
  diagnosisFormatName,
  diagnosisVersion,
  type GroupResult,
  type PositionResult,
} from "./diagnosis-format.ts";
import { nextResult, weighedResult } from "./next-result.ts";
import { noisesField } from "./noise-result.ts";
import { groupIdOf, shown, suspectResult } from "./suspect-result.ts";

/** What is made of a case, for some of its positions. */
export const diagnosisOf = (derived: Derived, positions: readonly string[]): Diagnosis => ({
  format: diagnosisFormatName,
  version: diagnosisVersion,
  rig: derived.rig.name,
  positions: positions.map((position) => positionResult(derived, position)),
  groups: groupsFor(derived, positions),
  neverTested: [
    ...neverTestedAt(
      english,
      derived.rig.positions.filter(({ id }) => positions.includes(id)),
      askedIn(derived),
    ),
  ],
});

function positionResult(derived: Derived, position: string): PositionResult {
  const standing = derived.standing(position);
  const suspects = shownIn(standing);
  return {
    position,
    name: derived.rig.positions.find(({ id }) => id === position)?.name ?? position,
    state: derived.state(position),
    trouble: shown(standing.trouble),
    unheard: shown(standing.unheard),
    suspects: suspects.map((one) => suspectResult(derived, one, suspects[0], position)),
    next: nextResult(derived, standing),
    ...noisesField(derived, position),
    ...(standing.choice === undefined ? {} : { weighed: weighedResult(derived, standing.choice) }),
    notTested: silentOn(derived, position),
  };
}

/** What answers as a healthy chain does on the way to a position. */
function silentOn({ model, groups }: Derived, position: string): string[] {
  const way = model.wayTo(position);
  const words = groups
    .filter(({ inaudible, branch }) => inaudible && way.includes(branch))
    .flatMap(({ faults }) => faults.map((fault) => faultWords(english, model, fault)));
  return [...new Set(words)];
}

function groupsFor(derived: Derived, positions: readonly string[]): GroupResult[] {
  const ways = new Set(positions.flatMap((position) => derived.model.wayTo(position)));
  return derived.groups
    .filter(({ branch }) => ways.has(branch))
    .map(({ faults, branch, inaudible }) => ({
      group: groupIdOf(derived, faults),
      positions: [...branch.positions],
      faults: faults.map(({ id }) => id),
      inaudible,
    }));
}

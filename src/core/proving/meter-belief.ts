import type { Happening, Reading } from "#core/checks/finding.ts";
import { isReading } from "#core/checks/finding.ts";
import { chanceOfReading } from "#core/diagnosis/continuity.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Probability } from "#core/units/units.ts";
import { leadId } from "./lead-rig.ts";
import { meterView } from "./meter-view.ts";

/** Sets of faults that no reading of a meter tells apart. */
interface Explanation {
  /** The likeliest set first. */
  readonly sets: readonly (readonly RigFault[])[];
  readonly probability: Probability;
  /** A healthy lead reads so, too. */
  readonly healthy: boolean;
}

/** What is believed of a lead, as far as a meter can tell. */
export interface MeterBelief {
  /** The likeliest first. */
  readonly explanations: readonly Explanation[];
  /** Faults that a meter would find beside what is likeliest, and that no reading so far speaks against. */
  readonly untested: readonly RigFault[];
}

/** What is less likely than this steers nothing. */
const negligible: Probability = 1e-6;
/** A fault is tested once the readings are so many times less likely under it than of a healthy lead. */
const against = 0.1;

/** What the lead's own wires can have: plugs stand in no socket while a meter is at them. */
export const isOwn = (derived: Derived, fault: RigFault): boolean =>
  fault.part === leadId &&
  derived.model.rig
    .part(leadId)
    .faults.some(({ name, at }) => name === fault.name && at === fault.at);

/** The beliefs of a rig, gathered by what a meter would tell apart. */
export function meterBelief(derived: Derived): MeterBelief {
  const { beliefs, model, happenings } = derived;
  const view = meterView(model.rig);
  const { faults, probabilities } = beliefs.sets(model.root);
  const classes = new Map<string, { sets: (readonly RigFault[])[]; chances: number[] }>();
  for (const [at, set] of faults.entries()) {
    const probability = probabilities[at] ?? 0;
    if (probability < negligible) continue;
    const text = view.all(set);
    const found = classes.get(text) ?? { sets: [], chances: [] };
    classes.set(text, found);
    found.sets.push(set);
    found.chances.push(probability);
  }
  const healthy = view.all([]);
  const explanations = [...classes].map(
    ([text, { sets, chances }]): Explanation => ({
      sets: likeliestFirst(sets, chances),
      probability: chances.reduce((sum, p) => sum + p, 0),
      healthy: text === healthy,
    }),
  );
  const ranked = explanations.sort((a, b) => b.probability - a.probability);
  const likeliest = ranked[0]?.healthy === false ? (ranked[0].sets[0] ?? []) : [];
  return {
    explanations: ranked,
    untested: untestedBy(derived, readingsIn(happenings), likeliest),
  };
}

const likeliestFirst = (
  sets: readonly (readonly RigFault[])[],
  chances: readonly number[],
): readonly (readonly RigFault[])[] =>
  sets
    .map((set, at) => ({ set, chance: chances[at] ?? 0 }))
    .sort((a, b) => b.chance - a.chance)
    .map(({ set }) => set);

/** The readings of the lead, in order. */
export const readingsIn = (happenings: readonly Happening[]): readonly Reading[] =>
  happenings.flatMap((one) =>
    one.kind === "finding" && isReading(one.finding) && one.finding.asked.part === leadId
      ? [one.finding]
      : [],
  );

function untestedBy(
  derived: Derived,
  readings: readonly Reading[],
  there: readonly RigFault[],
): readonly RigFault[] {
  const { rig, root } = derived.model;
  const view = meterView(rig);
  const alone = view.all(there);
  const chances = readings.flatMap((reading) => chanceOfReading(rig, reading) ?? []);
  const ratio = (fault: RigFault): number =>
    chances.reduce((product, chance) => product * (chance([...there, fault]) / chance(there)), 1);
  return root.faults
    .filter((fault) => isOwn(derived, fault) && there.every(({ slot }) => slot !== fault.slot))
    .filter((fault) => view.all([...there, fault]) !== alone && ratio(fault) > against);
}

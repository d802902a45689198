import type { Happening } from "#core/checks/finding.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import { likelihoodAt } from "#core/diagnosis/likelihood.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { modelFor } from "#core/session/derive.ts";
import { size } from "#core/units/complex.ts";
import type { Probability } from "#core/units/units.ts";
import type { LeadChoice } from "./choice.ts";
import { kindsWith, type LeadEnd } from "./ends.ts";
import { leadId, leadRig, provedAt } from "./lead-rig.ts";

/** A lead that something unknown may be, and how well it goes with what was found of it. */
export interface Candidate {
  readonly kind: PartKind;
  /** Against all others with these ends. */
  readonly probability: Probability;
  /** What would be wrong with it: nothing, or the one fault that goes best with what was found. */
  readonly fault?: RigFault;
  /** How likely it is that this is right, if it is such a lead. */
  readonly share: Probability;
  /** Sound or with one fault it makes what was found about as likely as the best of all does. */
  readonly explains: boolean;
}

/** What is not known of a lead is its kind: these are. */
export interface Unknown extends Omit<LeadChoice, "kind"> {
  readonly ends: readonly [LeadEnd, LeadEnd];
}

/** What makes the findings so many times less likely than the best does needs a slip more, and is no explanation. */
const strange = 0.05;

/**
 * What a lead with these ends may be, the likeliest first: each kind there is, sound or with any one fault, weighed by the odds of its faults and by
 * how likely it makes what was found. All kinds are as likely beforehand. The gains of a matrix are here against the open voltage of what
 * drives the lead, since no lead that is known to be good was measured first.
 */
export function whatThisIs(
  unknown: Unknown,
  happenings: readonly Happening[],
): readonly Candidate[] {
  const { ends, ...rest } = unknown;
  const weighed = kindsWith(...ends).map((kind) => ({
    kind,
    ...weigh({ ...rest, kind }, happenings),
  }));
  const all = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const best = Math.max(...weighed.map(({ top }) => top));
  return weighed
    .map(
      ({ kind, weight, fault, share, top }): Candidate => ({
        kind,
        probability: all > 0 ? weight / all : 0,
        share,
        explains: top > 0 && top >= best * strange,
        ...(fault === undefined ? {} : { fault }),
      }),
    )
    .sort((a, b) => b.probability - a.probability);
}

/** A measured matrix against the largest gain that this lead would have. */
function against(largest: number, happening: Happening): Happening {
  if (happening.kind !== "finding" || !("gains" in happening.finding)) return happening;
  const { finding } = happening;
  const by = ([re, im]: readonly [number, number]) => [re / largest, im / largest] as const;
  const [ll, lr, rl, rr] = finding.gains;
  return {
    kind: "finding",
    finding: {
      ...finding,
      gains: [by(ll), by(lr), by(rl), by(rr)],
      error: finding.error / largest,
    },
  };
}

interface Weighed {
  /** The chance of what was found, over the lead sound and with each fault. */
  readonly weight: number;
  /** The chance under the likeliest of these, its odds left out. */
  readonly top: number;
  readonly fault: RigFault | undefined;
  readonly share: Probability;
}

function weigh(choice: LeadChoice, happenings: readonly Happening[]): Weighed {
  const { model } = modelFor(leadRig(choice));
  const largest = Math.max(...earMatrix(model.rig, provedAt, []).flat().map(size));
  const told = happenings.map((one) => against(largest, one));
  const { heard, measured, glimpsed } = evidenceOf(model, told);
  const likelihood = likelihoodAt(model, heard, measured);
  const chanceUnder = (faults: readonly RigFault[]): number =>
    glimpsed.reduce(
      (product, { about, chance }) => product * chance(faults.filter(about)),
      likelihood?.(model.tokens.vector([model.under(provedAt, faults)])) ?? 1,
    );
  const faults = model.root.faults.filter(({ part }) => part === leadId);
  const odds = faults.reduce((sum, { weight }) => sum + weight / 1e4, 1);
  const cases = [undefined, ...faults].map((fault) => ({
    fault,
    odds: (fault === undefined ? 1 : fault.weight / 1e4) / odds,
    chance: chanceUnder(fault === undefined ? [] : [fault]),
  }));
  const weight = cases.reduce((sum, one) => sum + one.odds * one.chance, 0);
  const best = cases.reduce((most, one) =>
    one.odds * one.chance > most.odds * most.chance ? one : most,
  );
  return {
    weight,
    top: best.chance,
    fault: best.fault,
    share: weight > 0 ? (best.odds * best.chance) / weight : 0,
  };
}

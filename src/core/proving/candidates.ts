import type { Happening } from "#core/checks/finding.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import { likelihoodAt } from "#core/diagnosis/likelihood.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { modelFor } from "#core/session/derive.ts";
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
  /** What was found is about as likely as it can be of such a lead, sound or with one fault. */
  readonly explains: boolean;
}

/** What is not known of a lead is its kind: these are. */
export interface Unknown extends Omit<LeadChoice, "kind"> {
  readonly ends: readonly [LeadEnd, LeadEnd];
}

/** One reading in a thousand slips so far from what is there; more than that for each finding, and it is no explanation. */
const strange = 1e-3;

/**
 * What a lead with these ends may be, the likeliest first: each kind there is, sound or with any one fault, weighed by the odds of its faults and by
 * how likely it makes what was found. All kinds are as likely beforehand.
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
  const { heard, measured, glimpsed } = evidenceOf(model, happenings);
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

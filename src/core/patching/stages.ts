import { catalogue } from "#core/parts/catalogue.ts";
import type { Probability } from "#core/units/units.ts";
import type { Ends } from "./patch.ts";
import type { Recommendation } from "./recommend.ts";

/** What a box may have inside that nobody sees from outside, by the name of its parameter. */
export const stageParameter = "balancing";

/** How often each output stage is met. Common practice, no source. */
const odds: Readonly<Record<string, Probability>> = {
  "impedance-balanced": 0.45,
  "actively balanced": 0.35,
};
const rare: Probability = 0.05;

/** The advice for one output stage. */
export interface StageAdvice {
  readonly stage: string;
  readonly best: readonly Recommendation[];
}

/** The output stages a box may have; none where its kind has only one. */
export function stagesOf({ from }: Ends): readonly string[] {
  const parameter = catalogue[from.kind].parameters[stageParameter];
  return parameter !== undefined && "choices" in parameter ? parameter.choices : [];
}

/** A patch by what it is made of and where it goes, whatever is inside the box. */
const nameOf = ({ patch }: Recommendation): string => JSON.stringify(patch);

/** Whether it matters which stage it is: no first advice serves them all. */
export const stageDecides = (advice: readonly StageAdvice[]): boolean =>
  new Set(advice.map(({ best: [first] }) => (first ? nameOf(first) : ""))).size > 1;

/** Advice where the stage is not known. */
export interface Unsure {
  readonly first: Recommendation;
  /** How likely it is to serve, by how often its stages are met. */
  readonly chance: Probability;
  /** Where the first does not: the likeliest to serve then. */
  readonly otherwise?: Recommendation;
}

/** The patch that serves most stages as they are met and strains none of them, and the one to try if it is silent or thin. */
export function whereUnknown(advice: readonly StageAdvice[]): Unsure | undefined {
  const first = likeliest(advice);
  if (first === undefined) return undefined;
  const served = (stage: StageAdvice) =>
    stage.best.some((one) => nameOf(one) === nameOf(first) && one.prediction.strains.length === 0);
  const otherwise = likeliest(advice.filter((stage) => !served(stage)));
  const chance = share(advice.filter(served)) / share(advice);
  return { first, chance, ...(otherwise ? { otherwise } : {}) };
}

const share = (advice: readonly StageAdvice[]): number =>
  advice.reduce((sum, { stage }) => sum + (odds[stage] ?? rare), 0);

function likeliest(advice: readonly StageAdvice[]): Recommendation | undefined {
  const found = new Map<string, { one: Recommendation; worth: number }>();
  for (const { stage, best } of advice)
    for (const one of best.filter(({ prediction }) => prediction.strains.length === 0)) {
      const before = found.get(nameOf(one));
      const worth = (before?.worth ?? 0) + (odds[stage] ?? rare);
      found.set(nameOf(one), { one: before?.one ?? one, worth });
    }
  const value = ({ one, worth }: { one: Recommendation; worth: number }) => worth - one.cost / 40;
  return [...found.values()].sort((a, b) => value(b) - value(a))[0]?.one;
}

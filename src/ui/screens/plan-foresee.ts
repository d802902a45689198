import { catalogue } from "#core/parts/catalogue.ts";
import { panMoves } from "#core/patching/panning.ts";
import { type Ends, type Patch, rigOf } from "#core/patching/patch.ts";
import { type Prediction, predictionAt } from "#core/patching/prediction.ts";
import { outputsOf } from "#core/patching/sockets-of.ts";
import { stageParameter, stagesOf } from "#core/patching/stages.ts";
import { gives, type Want } from "#core/patching/wants.ts";
import { type BuiltRig, build, type Rig, type RigPart } from "#core/rig/rig.ts";
import type { Plan } from "./plan.ts";

/** What will come of a plan. */
export interface Foreseen {
  readonly rig: BuiltRig;
  readonly prediction: Prediction;
}

/** What a plan is heard by. */
export type Heard = Ends & { readonly patch: Patch };

/** The plan as a rig to be built, `you` in its one position; nothing while it is not plugged through. */
export function rigFor(plan: Heard, you = "1"): Rig | undefined {
  const { from, into, worn, patch } = plan;
  const feeds = patch.plugged.some((end) => end.into === from.id);
  const fed = patch.plugged.some(({ part, into: box }) => part === into.id || box === into.id);
  if (!feeds || !fed) return undefined;
  const [out] = outputsOf(into);
  const rig = rigOf({ from, into, ...(worn ? { worn } : {}) }, patch, out?.name);
  return { ...rig, positions: rig.positions.map((one) => ({ ...one, name: you })) };
}

/** What is heard: what arrives; with what the outputs harm that it leaves by, and the one that the headphones are in. */
export function foresee(plan: Heard): Foreseen | undefined {
  const rig = rigFor(plan);
  if (rig === undefined) return undefined;
  const built = build(rig);
  const arriving = predictionAt(built, plan.into.id);
  const worn = plan.worn ? outputsOf(plan.into).slice(0, 1) : [];
  const harms = [...arriving.harms, ...worn.flatMap((socket) => socket.harms ?? [])];
  return { rig: built, prediction: { ...arriving, harms: [...new Set(harms)] } };
}

/** What comes of a plan for one output stage. */
export interface Outcome {
  readonly stage: string;
  readonly prediction: Prediction;
}

/** Whether somebody has said what the output stage is. */
export const stageSaid = ({ from: { settings } }: Pick<Plan, "from">): boolean =>
  settings?.[stageParameter] !== undefined;

const withStage = (part: RigPart, stage: string): RigPart => ({
  ...part,
  settings: { ...part.settings, [stageParameter]: stage },
});

/** What comes of each output stage that it may have; nothing where it has only one. */
export const outcomesOf = (plan: Heard): readonly Outcome[] =>
  stagesOf(plan).flatMap((stage) => {
    const seen = foresee({ ...plan, from: withStage(plan.from, stage) });
    return seen === undefined ? [] : [{ stage, prediction: seen.prediction }];
  });

/** What is wanted, with nothing strained and nothing that harms. */
const isFine = (prediction: Prediction, want: Want): boolean =>
  gives(prediction, want) && prediction.strains.length === 0 && prediction.harms.length === 0;

/** Whether what is drawn is what is wanted, whatever is inside the box. */
export const isCertain = (
  want: Want,
  foreseen: Foreseen | undefined,
  outcomes: readonly Outcome[],
): boolean =>
  foreseen !== undefined &&
  [foreseen, ...outcomes].every(({ prediction }) => isFine(prediction, want));

/** Whether what is heard hangs on the output stage. */
export const stageMatters = (outcomes: readonly Outcome[]): boolean =>
  new Set(outcomes.map(({ prediction }) => prediction.effect)).size > 1;

export const panWorks = ({ panning }: Prediction): boolean => panMoves(panning);

/** How a part is powered, as far as it has been said. */
export function supplyOf({ kind, settings = {} }: RigPart): string | undefined {
  const { parameters } = catalogue[kind];
  const name = "supply" in parameters ? "supply" : "power";
  const parameter = parameters[name];
  const value = settings[name] ?? parameter?.typical;
  return value === undefined ? undefined : String(value);
}

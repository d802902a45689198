import type { Ends, Patch } from "#core/patching/patch.ts";
import { withPartner } from "#core/patching/patches.ts";
import { type Recommendation, recommending } from "#core/patching/recommend.ts";
import { outputsOf } from "#core/patching/sockets-of.ts";
import {
  type StageAdvice,
  stageDecides,
  stageParameter,
  stagesOf,
  type Unsure,
  whereUnknown,
} from "#core/patching/stages.ts";
import type { Plan } from "./plan.ts";
import { stageSaid } from "./plan-foresee.ts";

/** What to do so that it becomes what is wanted. */
export type Advised =
  | { readonly advice: "none" }
  /** No first advice serves every output stage that it may have, and nobody has said which it is. */
  | { readonly advice: "ask" }
  | { readonly advice: "take"; readonly best: Recommendation; readonly others: Others }
  | { readonly advice: "unsure"; readonly unsure: Unsure; readonly others: Others };

type Others = readonly Recommendation[];

/** So many other ways are shown, and none that takes this much more: a lead to be made is 4. */
const most = 3;
const muchMore = 3;

/**
 * Searches the leads for what is wanted: by the output that was pointed at, else by any of the box. Each search takes a moment, so there is a
 * rest between one and the next.
 */
export function* advising(plan: Plan): Generator<void, Advised> {
  const own = withPartner(outputsOf(plan.from), plan.socket);
  const here = yield* byStages(plan, own);
  const elsewhere = yield* searched(plan, undefined);
  const calm = here.some(({ best }) => best.some(isCalm));
  const advice = calm || !elsewhere.some(isCalm) ? here : yield* byStages(plan, undefined);
  return advised(plan, advice, elsewhere);
}

const isCalm = ({ prediction }: Recommendation): boolean => prediction.strains.length === 0;

function* searched(ends: Ends & Pick<Plan, "want">, sockets: readonly string[] | undefined) {
  yield;
  return yield* recommending(ends, ends.want, sockets);
}

/** Once for every output stage it may have; once where that is known. */
function* byStages(
  plan: Plan,
  sockets: readonly string[] | undefined,
): Generator<void, readonly StageAdvice[]> {
  const stages = stageSaid(plan) ? [] : stagesOf(plan);
  if (stages.length === 0) return [{ stage: "", best: yield* searched(plan, sockets) }];
  const all: StageAdvice[] = [];
  for (const stage of stages) {
    const settings = { ...plan.from.settings, [stageParameter]: stage };
    const best = yield* searched({ ...plan, from: { ...plan.from, settings } }, sockets);
    all.push({ stage, best });
  }
  return all;
}

function advised(plan: Plan, advice: readonly StageAdvice[], elsewhere: Others): Advised {
  const [first] = advice.flatMap(({ best }) => best.slice(0, 1));
  if (first === undefined) return { advice: "none" };
  if (!stageDecides(advice)) {
    const own = advice[0]?.best ?? [];
    return { advice: "take", best: first, others: othersThan([first], [...own, ...elsewhere]) };
  }
  if (!plan.stageUnknown) return { advice: "ask" };
  const unsure = whereUnknown(advice);
  if (unsure === undefined) return { advice: "none" };
  const shown = [unsure.first, ...(unsure.otherwise ? [unsure.otherwise] : [])];
  return { advice: "unsure", unsure, others: othersThan(shown, elsewhere) };
}

const kindsOf = ({ wires, plugged }: Patch): string =>
  [...wires.map(({ kind }) => kind), ...plugged.map(({ socket }) => socket)].sort().join();

/** Ways that are not shown already, each once, the calm ones. */
function othersThan(shown: Others, all: Others): Others {
  const seen = new Set(shown.map(({ patch }) => kindsOf(patch)));
  const least = Math.min(...shown.map(({ cost }) => cost));
  return all
    .filter((one) => {
      const known = seen.has(kindsOf(one.patch));
      seen.add(kindsOf(one.patch));
      return !known && isCalm(one) && one.cost < least + muchMore;
    })
    .slice(0, most);
}

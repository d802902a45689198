import { useMemo } from "preact/hooks";
import type { Patch } from "#core/patching/patch.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { firstPlan, type Plan, undone, withPatch } from "./plan.ts";
import { PlanAdvice } from "./plan-advice.tsx";
import { PlanCare } from "./plan-care.tsx";
import { PlanFacts } from "./plan-facts.tsx";
import { type Foreseen, foresee, outcomesOf, stageSaid } from "./plan-foresee.ts";
import { PlanHarm } from "./plan-harm.tsx";
import { PlanHint } from "./plan-hint.tsx";
import { PlanSentence } from "./plan-sentence.tsx";
import { PlanStage } from "./plan-stage.tsx";
import { PlanTray } from "./plan-tray.tsx";
import { PlanWants } from "./plan-wants.tsx";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  /** What has been said so far, if anything. */
  readonly plan: Plan | undefined;
  /** Plays what is foreseen, where somebody can. */
  readonly hear?: ((plan: Plan, foreseen: Foreseen) => void) | undefined;
}

/** Before anything is plugged in: what one has, what each ear will get of it, and what makes it right. */
export function PlanScreen({ held, plan: so, hear }: Props) {
  const words = useWords().plan;
  const plan = useMemo(() => so ?? firstPlan(), [so]);
  const { from, into, worn, patch } = plan;
  const heard = useMemo(
    () => ({ from, into, patch, ...(worn ? { worn } : {}) }),
    [from, into, worn, patch],
  );
  const foreseen = useMemo(() => foresee(heard), [heard]);
  const outcomes = useMemo(() => (stageSaid(heard) ? [] : outcomesOf(heard)), [heard]);
  const go = (how: (plan: Plan) => Plan) =>
    held.change((one) =>
      one.view.screen === "plan"
        ? { ...one, view: { ...one.view, plan: how(one.view.plan ?? plan) } }
        : one,
    );
  const take = (taken: Patch) => {
    go((one) => withPatch(one, taken));
    requestAnimationFrame(lookAtPicture);
  };
  const undo = () => {
    go(undone);
    document.querySelector<HTMLElement>("h1")?.focus();
  };
  const at = { plan, foreseen, outcomes, go };
  const harms = foreseen?.prediction.harms ?? [];
  return (
    <div class="plan">
      <header>
        <Heading>{words.title}</Heading>
        {plan.before && (
          <button type="button" class="quiet" onClick={undo}>
            {words.undo}
          </button>
        )}
      </header>
      <PlanStage {...at} />
      <PlanHint {...at} />
      {plan.open && <PlanTray {...at} open={plan.open} />}
      {harms.length > 0 ? (
        <PlanHarm harms={harms} />
      ) : (
        <>
          <PlanSentence {...at} begin={held.begin} hear={hear} />
          {foreseen && <PlanFacts plan={plan} prediction={foreseen.prediction} />}
          <PlanWants {...at} />
          <PlanAdvice {...at} take={take} />
        </>
      )}
      <PlanCare />
      <button
        type="button"
        class="quiet"
        onClick={() => {
          go((one) => ({ ...firstPlan(), before: one }));
          scrollTo(0, 0);
        }}
      >
        {words.again}
      </button>
    </div>
  );
}

/** Up to what has changed, and the focus to what that gives. */
function lookAtPicture(): void {
  scrollTo(0, 0);
  document.querySelector<HTMLElement>(".gets-what")?.focus({ preventScroll: true });
}

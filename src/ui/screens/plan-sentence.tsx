import { catalogue } from "#core/parts/catalogue.ts";
import { sentence } from "#core/report/phrases.ts";
import type { Rig } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import { said } from "#ui/parts/ear-text.ts";
import { sceneOf } from "#ui/parts/scene.ts";
import type { Plan } from "./plan.ts";
import { type Foreseen, rigFor, stageMatters } from "./plan-foresee.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { nameOf } from "./plan-words.ts";

interface Props extends AtPlan {
  readonly begin: (rig: Rig) => void;
  readonly hear?: ((plan: Plan, foreseen: Foreseen) => void) | undefined;
}

/** One sentence: what each ear gets; and the presses that hear it, and check it once it is built. */
export function PlanSentence({ plan, foreseen, outcomes, begin, hear }: Props) {
  if (foreseen === undefined) return null;
  const { prediction, rig } = foreseen;
  const [left, right] = sceneOf(plan, rig, prediction).ears;
  const matters = stageMatters(outcomes);
  const worn = plan.worn !== undefined || catalogue[plan.into.kind].family === "headphones";
  const real = worn ? rigFor(plan) : undefined;
  const place = worn ? "ear" : "side";
  return (
    <section class="plan-sentence">
      <div aria-live="polite">
        <p class="gets-what" tabIndex={-1}>
          {matters && "Most likely: "}
          {matters
            ? english.effects[prediction.effect]
            : sentence(english.effects[prediction.effect]).slice(0, -1)}
          .
        </p>
        <p class="sub">
          {`Left ${place}: ${said(left)}. Right ${place}: ${said(right)}.`}
          {matters && ` It hangs on what is inside the ${nameOf(plan.from)}: see below.`}
        </p>
      </div>
      <p class="plan-presses">
        {hear && (
          <button type="button" class="main" onClick={() => hear(plan, foreseen)}>
            Hear it
          </button>
        )}
        {real && (
          <button type="button" class="say" onClick={() => begin({ ...real, name: rigName(plan) })}>
            Check it now
          </button>
        )}
      </p>
    </section>
  );
}

const rigName = ({ from, into }: Plan): string => `${nameOf(from)} into ${nameOf(into)}`;

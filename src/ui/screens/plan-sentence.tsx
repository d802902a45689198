import { catalogue } from "#core/parts/catalogue.ts";
import { sentence } from "#core/report/phrases.ts";
import type { Rig } from "#core/rig/rig.ts";
import { said } from "#ui/parts/ear-text.ts";
import { sceneOf } from "#ui/parts/scene.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
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
  const words = useWords();
  if (foreseen === undefined) return null;
  const { prediction, rig } = foreseen;
  const [left, right] = sceneOf(plan, rig, prediction).ears;
  const matters = stageMatters(outcomes);
  const worn = plan.worn !== undefined || catalogue[plan.into.kind].family === "headphones";
  const real = worn ? rigFor(plan, words.plan.sentence.you) : undefined;
  const { ears, sides, likely, hangsOn, hear: hearIt, check } = words.plan.sentence;
  const effect = words.language.effects[prediction.effect];
  return (
    <section class="plan-sentence">
      <div aria-live="polite">
        <p class="gets-what" tabIndex={-1}>
          {matters ? likely(effect) : sentence(effect)}
        </p>
        <p class="sub">
          {(worn ? ears : sides)(said(words, left), said(words, right))}
          {matters && ` ${hangsOn(nameOf(words, plan.from))}`}
        </p>
      </div>
      <p class="plan-presses">
        {hear && (
          <button type="button" class="main" onClick={() => hear(plan, foreseen)}>
            {hearIt}
          </button>
        )}
        {real && (
          <button
            type="button"
            class="say"
            onClick={() => begin({ ...real, name: rigName(words, plan) })}
          >
            {check}
          </button>
        )}
      </p>
    </section>
  );
}

/** Where a word may break is the screen's affair: a name is kept without. */
const rigName = (words: Words, { from, into }: Plan): string =>
  words.plan.sentence.rig(nameOf(words, from), nameOf(words, into)).replaceAll("\u00AD", "");

import { type Want, wants } from "#core/patching/wants.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { WantPicture } from "#ui/parts/want-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { wanting } from "./plan.ts";
import type { AtPlan } from "./plan-stage.tsx";

/** What should it be? A row to point at. */
export function PlanWants({ plan, go }: AtPlan) {
  const words = useWords();
  return (
    <section class="plan-wants">
      <h2 id="wants">{words.plan.wants}</h2>
      <Roving label={words.plan.wants} kind="wants">
        {wants.map((want: Want) => (
          <button
            key={want}
            type="button"
            class="want"
            aria-pressed={plan.want === want}
            onClick={() => go((one) => wanting(one, want))}
          >
            <WantPicture want={want} />
            {words.language.patching.wants[want]}
          </button>
        ))}
      </Roving>
    </section>
  );
}

import { type Want, wants } from "#core/patching/wants.ts";
import { english } from "#core/words/english.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { WantPicture } from "#ui/parts/want-picture.tsx";
import { wanting } from "./plan.ts";
import type { AtPlan } from "./plan-stage.tsx";

/** What should it be? A row to point at. */
export const PlanWants = ({ plan, go }: AtPlan) => (
  <section class="plan-wants">
    <h2 id="wants">What should it be?</h2>
    <Roving label="What should it be?" kind="wants">
      {wants.map((want: Want) => (
        <button
          key={want}
          type="button"
          class="want"
          aria-pressed={plan.want === want}
          onClick={() => go((one) => wanting(one, want))}
        >
          <WantPicture want={want} />
          {english.patching.wants[want]}
        </button>
      ))}
    </Roving>
  </section>
);

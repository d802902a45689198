import { provedAt } from "#core/proving/lead-rig.ts";
import { capital } from "#core/report/phrases.ts";
import { english } from "#core/words/english.ts";
import { LastAnswer } from "./last-answer.tsx";
import { Needed } from "./position-screen.tsx";
import type { AtProving } from "./prove-work.tsx";
import type { Ready } from "./ready.ts";

/** A lead between gear that is known to be good: what whoever listens is asked. */
export const ProveByEar = ({ held, ready, lead }: AtProving & { readonly ready: Ready }) => (
  <>
    <p class="dim">
      {`${capital(english.patching.kinds[lead.kind].name)}, between gear that is known to be good`}
    </p>
    <Needed
      held={held}
      ready={ready}
      position={provedAt}
      advice={ready.derived.standing(provedAt).advice}
    />
    <LastAnswer held={held} />
  </>
);

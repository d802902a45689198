import { provedAt } from "#core/proving/lead-rig.ts";
import { capital } from "#core/report/phrases.ts";
import { useWords } from "#ui/words/use-words.ts";
import { LastAnswer } from "./last-answer.tsx";
import { Needed } from "./position-screen.tsx";
import type { AtProving } from "./prove-work.tsx";
import type { Ready } from "./ready.ts";

/** A lead between gear that is known to be good: what whoever listens is asked. */
export function ProveByEar({ held, ready, lead }: AtProving & { readonly ready: Ready }) {
  const { language, prove } = useWords();
  const { name } = language.patching.kinds[lead.kind];
  return (
    <>
      <p class="dim">{capital(prove.betweenGood(name))}</p>
      <Needed
        held={held}
        ready={ready}
        position={provedAt}
        advice={ready.derived.standing(provedAt).advice}
      />
      <LastAnswer held={held} />
    </>
  );
}

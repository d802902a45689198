import type { Patch } from "#core/patching/patch.ts";
import type { Recommendation } from "#core/patching/recommend.ts";
import { inHundred } from "#core/report/phrases.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Advised } from "./plan-advise.ts";
import { isCertain } from "./plan-foresee.ts";
import { PlanMove } from "./plan-move.tsx";
import { OtherWays } from "./plan-others.tsx";
import type { AtPlan } from "./plan-stage.tsx";
import { StageChoice } from "./plan-stage-choice.tsx";
import { nameOf } from "./plan-words.ts";
import { useAdvice } from "./use-advice.ts";

/** What makes it what is wanted: nothing more, one lead, or first the one thing that nobody sees from outside. */
export function PlanAdvice(at: Takes) {
  const advised = useAdvice(at.plan);
  return (
    <section class="plan-advice" tabIndex={-1} aria-busy={advised === undefined}>
      {isCertain(at.plan.want, at.foreseen, at.outcomes) ? (
        <Given {...at} advised={advised} />
      ) : (
        <Advice {...at} advised={advised} />
      )}
    </section>
  );
}

export interface Takes extends AtPlan {
  /** Puts a patch into the picture. */
  readonly take: (patch: Patch) => void;
}

type Props = Takes & { readonly advised: Advised | undefined };

/** What is drawn is right: said plainly, with other ways on demand. */
function Given({ advised, ...at }: Props) {
  const others =
    advised?.advice === "take" ? [advised.best, ...advised.others].filter(isOther(at)) : [];
  const { language, plan } = useWords();
  return (
    <>
      <p class="given">
        <Tick /> {plan.advice.given(language.patching.wants[at.plan.want])}
      </p>
      <OtherWays {...at} others={others} />
    </>
  );
}

const isOther =
  ({ plan }: AtPlan) =>
  ({ patch }: Recommendation): boolean =>
    JSON.stringify(patch.wires.map(({ kind }) => kind)) !==
    JSON.stringify(plan.patch.wires.map(({ kind }) => kind));

function Advice({ advised, ...at }: Props) {
  const words = useWords();
  const { advice } = words.plan;
  if (advised === undefined) return <p class="working">{advice.working}</p>;
  switch (advised.advice) {
    case "ask":
      return <StageChoice {...at} decides />;
    case "none":
      return <p class="none">{noneWords(words, at)}</p>;
    case "take":
      return (
        <>
          <PlanMove {...at} move={advised.best} title={advice.take} />
          <OtherWays {...at} others={advised.others} />
        </>
      );
    case "unsure":
      return <Unsure {...at} advised={advised} />;
  }
}

/** Where nobody knows the output stage: what serves most, and what to do where it does not. */
function Unsure({
  advised,
  ...at
}: Takes & { readonly advised: Extract<Advised, { advice: "unsure" }> }) {
  const { language, plan } = useWords();
  const { advice } = plan;
  const { first, chance, otherwise } = advised.unsure;
  return (
    <>
      <PlanMove {...at} move={first} title={advice.rightFor(inHundred(language, chance))} />
      <div class="ways">
        {otherwise && <OtherWays {...at} title={advice.ifSilent} others={[otherwise]} />}
        <OtherWays {...at} others={advised.others} />
      </div>
    </>
  );
}

function noneWords(words: Words, { plan: { want, from, into } }: AtPlan): string {
  const { none, needed } = words.plan.advice;
  const wanted = words.language.patching.wants[want];
  return none(wanted, nameOf(words, from), nameOf(words, into), needed[want]);
}

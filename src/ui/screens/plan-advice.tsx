import type { Patch } from "#core/patching/patch.ts";
import type { Recommendation } from "#core/patching/recommend.ts";
import type { Want } from "#core/patching/wants.ts";
import { inHundred } from "#core/report/phrases.ts";
import { english } from "#core/words/english.ts";
import { Tick } from "#ui/parts/marks.tsx";
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
  return (
    <>
      <p class="given">
        <Tick /> {`What is drawn gives it: ${english.patching.wants[at.plan.want]}.`}
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
  if (advised === undefined) return <p class="working">Looking through the leads…</p>;
  switch (advised.advice) {
    case "ask":
      return <StageChoice {...at} why=" It decides which lead is right." />;
    case "none":
      return <p class="none">{noneWords(at)}</p>;
    case "take":
      return (
        <>
          <PlanMove {...at} move={advised.best} title="Take" />
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
  const { first, chance, otherwise } = advised.unsure;
  return (
    <>
      <PlanMove
        {...at}
        move={first}
        title={`Right for ${inHundred(english, chance)} such boxes. Take`}
      />
      <div class="ways">
        {otherwise && <OtherWays {...at} title="If it is silent or thin" others={[otherwise]} />}
        <OtherWays {...at} others={advised.others} />
      </div>
    </>
  );
}

/** What would be needed. */
const needed: Readonly<Record<Want, string>> = {
  stereo: "a headphone socket, or a pair of outputs marked left and right",
  "mono in both ears": "one output that carries the whole mix, and a lead from its tip to both",
  "an own mix": "a send of its own, or a mix output that is not the main one",
  "left ear only": "an output that carries what shall be heard, and a lead to the tip alone",
  "right ear only": "an output that carries what shall be heard, and a lead to the ring alone",
};

const noneWords = ({ plan: { want, from, into } }: AtPlan): string =>
  `No lead or adapter gives ${english.patching.wants[want]} from the ${nameOf(from)} into ${nameOf(into)}. It would take ${needed[want]}.`;

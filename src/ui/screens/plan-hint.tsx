import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Plan } from "./plan.ts";
import { leftOut, mayLeaveOut } from "./plan-moves.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { nameOf, patchName } from "./plan-words.ts";

/** One line under the picture: what a press does now, or why it did something else. */
export function PlanHint({ plan, foreseen, go }: AtPlan) {
  const words = useWords();
  const { hint } = words.plan;
  const { inHand } = plan;
  if (inHand)
    return (
      <p class="plan-hint">
        {hint.inHand(words.marks.plug(inHand.plug))}
        {mayLeaveOut(plan, inHand) && (
          <button type="button" class="quiet" onClick={() => go((one) => leftOut(one, inHand))}>
            {hint.leaveOut}
          </button>
        )}
      </p>
    );
  const text = foreseen === undefined ? unjoined(words, plan) : otherLead(words, plan);
  if (text === undefined && plan.before !== undefined) return null;
  return <p class="plan-hint">{text ?? hint.point}</p>;
}

/** Nothing goes between the two. */
const unjoined = (words: Words, { from, into }: Plan): string =>
  words.plan.hint.unjoined(nameOf(words, from), nameOf(words, into));

/** Said once where a lead had to make way. */
function otherLead(words: Words, { before, patch, socket }: Plan): string | undefined {
  if (before === undefined || before.socket === socket || before.patch.wires.length === 0)
    return undefined;
  const [was, is] = [patchName(words, before.patch), patchName(words, patch)];
  return was === is ? undefined : words.plan.hint.otherLead(was, is);
}

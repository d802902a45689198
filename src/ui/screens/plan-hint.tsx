import type { Plan } from "./plan.ts";
import { leftOut, mayLeaveOut } from "./plan-moves.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { nameOf, patchName } from "./plan-words.ts";

/** One line under the picture: what a press does now, or why it did something else. */
export function PlanHint({ plan, foreseen, go }: AtPlan) {
  const { inHand } = plan;
  if (inHand)
    return (
      <p class="plan-hint">
        {`In your hand: the plug marked ${inHand.plug}. Point at a socket for it, or press it again to let go.`}
        {mayLeaveOut(plan, inHand) && (
          <button type="button" class="quiet" onClick={() => go((one) => leftOut(one, inHand))}>
            leave it unplugged
          </button>
        )}
      </p>
    );
  const text = foreseen === undefined ? unjoined(plan) : otherLead(plan);
  if (text === undefined && plan.before !== undefined) return null;
  return <p class="plan-hint">{text ?? "Point at a socket, a plug or a name to change it."}</p>;
}

/** Nothing goes between the two. */
const unjoined = ({ from, into }: Plan): string =>
  `No plug or lead goes from this socket of the ${nameOf(from)} to the ${nameOf(into)}. Point at another socket, or press a name for another box.`;

/** Said once where a lead had to make way. */
function otherLead({ before, patch, socket }: Plan): string | undefined {
  if (before === undefined || before.socket === socket || before.patch.wires.length === 0)
    return undefined;
  const [was, is] = [patchName(before.patch), patchName(patch)];
  return was === is ? undefined : `The ${was} does not go there, so it is ${is} now.`;
}

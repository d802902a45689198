import type { Recommendation } from "#core/patching/recommend.ts";
import { LeadPicture } from "#ui/parts/lead-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Takes } from "./plan-advice.tsx";
import { outputsWords, patchName } from "./plan-words.ts";

interface Props extends Pick<Takes, "plan" | "take"> {
  readonly others: readonly Recommendation[];
  readonly title?: string;
}

/** A few other ways to the same, each drawn; pressed, it goes into the picture. */
export function OtherWays({ plan, take, others, title }: Props) {
  const words = useWords();
  const heading = title ?? words.plan.advice.or;
  if (others.length === 0) return null;
  return (
    <div class="others">
      <h2>{heading}</h2>
      <Roving label={heading} kind="picks leads">
        {others.map((one) => (
          <button
            key={JSON.stringify(one.patch)}
            type="button"
            class="pick"
            onClick={() => take(one.patch)}
          >
            <LeadPicture wires={one.patch.wires} />
            <span class="tape">{patchName(words, one.patch)}</span>
            <span class="note">{fromWords(words, plan, one)}</span>
          </button>
        ))}
      </Roving>
    </div>
  );
}

/** Where it comes from, and whether somebody has to make it. */
function fromWords(
  words: Words,
  plan: Props["plan"],
  { patch: { plugged }, toMake }: Recommendation,
): string {
  const { from, fromToMake } = words.plan.advice;
  const own = plugged.filter(({ into }) => into === plan.from.id).map((end) => end.socket);
  return (toMake ? fromToMake : from)(outputsWords(words, plan, own));
}

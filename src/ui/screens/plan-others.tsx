import type { Recommendation } from "#core/patching/recommend.ts";
import { LeadPicture } from "#ui/parts/lead-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import type { Takes } from "./plan-advice.tsx";
import { outputsWords, patchName } from "./plan-words.ts";

interface Props extends Pick<Takes, "plan" | "take"> {
  readonly others: readonly Recommendation[];
  readonly title?: string;
}

/** A few other ways to the same, each drawn; pressed, it goes into the picture. */
export const OtherWays = ({ plan, take, others, title = "Or" }: Props) =>
  others.length === 0 ? null : (
    <div class="others">
      <h2>{title}</h2>
      <Roving label={title} kind="picks leads">
        {others.map(({ patch, toMake }) => (
          <button
            key={JSON.stringify(patch)}
            type="button"
            class="pick"
            onClick={() => take(patch)}
          >
            <LeadPicture wires={patch.wires} />
            <span class="tape">{patchName(patch)}</span>
            <span class="note">
              {`from ${outputsWords(
                plan,
                patch.plugged.filter(({ into }) => into === plan.from.id).map((end) => end.socket),
              )}${toMake ? "; to be made" : ""}`}
            </span>
          </button>
        ))}
      </Roving>
    </div>
  );

import type { Prediction } from "#core/patching/prediction.ts";
import { useWords } from "#ui/words/use-words.ts";

/** What can harm ears or gear, in the place of everything else. */
export function PlanHarm({ harms }: { readonly harms: Prediction["harms"] }) {
  const { patching } = useWords().language;
  return (
    <div class="harm" role="alert">
      {harms.map((harm) => {
        const { stop, why, instead } = patching.harms[harm];
        return (
          <div key={harm}>
            <h2>{stop}</h2>
            <p>{why}</p>
            <p class="instead">{instead}</p>
          </div>
        );
      })}
    </div>
  );
}

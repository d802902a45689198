import type { Prediction } from "#core/patching/prediction.ts";
import { english } from "#core/words/english.ts";

/** What can harm ears or gear, in the place of everything else. */
export const PlanHarm = ({ harms }: { readonly harms: Prediction["harms"] }) => (
  <div class="harm" role="alert">
    {harms.map((harm) => {
      const { stop, why, instead } = english.patching.harms[harm];
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

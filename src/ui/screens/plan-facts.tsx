import type { Prediction } from "#core/patching/prediction.ts";
import { sentence } from "#core/report/phrases.ts";
import { english } from "#core/words/english.ts";
import { EarthPicture, LevelPicture, PanPicture, StrainPicture } from "#ui/parts/fact-pictures.tsx";
import type { Plan } from "./plan.ts";
import { supplyOf } from "./plan-foresee.ts";
import { toneWords } from "./plan-tone.ts";
import { humWords, levelWords, panWords, strainWords } from "./plan-words.ts";

interface Props {
  readonly plan: Plan;
  readonly prediction: Prediction;
}

/** Four small facts, each drawn and said: pan, level and what it hangs on, hum, strain. */
export const PlanFacts = ({ plan, prediction }: Props) => (
  <ul class="facts">
    <li>
      <PanPicture panning={prediction.panning} />
      <p>{panWords(prediction)}</p>
    </li>
    <li>
      <LevelPicture level={prediction.level} />
      <p>{levelAndTies(prediction)}</p>
    </li>
    <li class={prediction.hum === "loud" ? "bad" : ""}>
      <EarthPicture hum={prediction.hum} supplies={[supplyOf(plan.from), supplyOf(plan.into)]} />
      <p>{humWords(prediction, plan)}</p>
    </li>
    <li class={prediction.strains.length > 0 ? "bad" : ""}>
      <StrainPicture strained={prediction.strains.length > 0} />
      <p>{strainWords(prediction)}</p>
    </li>
  </ul>
);

/** How loud, how it sounds where that is not even, and what it hangs on. */
const levelAndTies = (prediction: Prediction): string =>
  [
    levelWords(prediction),
    ...toneWords(prediction),
    ...prediction.ties.map((tie) => sentence(english.patching.ties[tie])),
  ].join(" ");

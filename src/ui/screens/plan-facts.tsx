import type { Prediction } from "#core/patching/prediction.ts";
import { sentence } from "#core/report/phrases.ts";
import { EarthPicture, LevelPicture, PanPicture, StrainPicture } from "#ui/parts/fact-pictures.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Plan } from "./plan.ts";
import { supplyOf } from "./plan-foresee.ts";
import { toneWords } from "./plan-tone.ts";
import { humWords, levelWords, panWords, strainWords } from "./plan-words.ts";

interface Props {
  readonly plan: Plan;
  readonly prediction: Prediction;
}

/** Four small facts, each drawn and said: pan, level and what it hangs on, hum, strain. */
export function PlanFacts({ plan, prediction }: Props) {
  const words = useWords();
  return (
    <ul class="facts">
      <li>
        <PanPicture panning={prediction.panning} />
        <p>{panWords(words, prediction)}</p>
      </li>
      <li>
        <LevelPicture level={prediction.level} />
        <p>{levelAndTies(words, prediction)}</p>
      </li>
      <li class={prediction.hum === "loud" ? "bad" : ""}>
        <EarthPicture hum={prediction.hum} supplies={[supplyOf(plan.from), supplyOf(plan.into)]} />
        <p>{humWords(words, prediction, plan)}</p>
      </li>
      <li class={prediction.strains.length > 0 ? "bad" : ""}>
        <StrainPicture strained={prediction.strains.length > 0} />
        <p>{strainWords(words, prediction)}</p>
      </li>
    </ul>
  );
}

/** How loud, how it sounds where that is not even, and what it hangs on. */
const levelAndTies = (words: Words, prediction: Prediction): string =>
  [
    levelWords(words, prediction),
    ...toneWords(words, prediction),
    ...prediction.ties.map((tie) => sentence(words.language.patching.ties[tie])),
  ].join(" ");

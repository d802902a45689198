import type { Recommendation } from "#core/patching/recommend.ts";
import { sentence } from "#core/report/phrases.ts";
import { PinDrawing } from "#ui/parts/pin-drawing.tsx";
import { spelledOut } from "#ui/parts/pins.ts";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Plan } from "./plan.ts";
import type { Takes } from "./plan-advice.tsx";
import { pinWords } from "./plan-pin-words.ts";
import { toneWords } from "./plan-tone.ts";
import {
  humWords,
  levelWords,
  nameOf,
  outputsWords,
  patchName,
  strainWords,
} from "./plan-words.ts";

interface Props extends Pick<Takes, "plan" | "take"> {
  readonly move: Recommendation;
  readonly title: string;
}

/** The one lead to take: what it is called, drawn and spelled pin by pin, what to weigh, and the press that uses it. */
export function PlanMove({ plan, take, move, title }: Props) {
  const words = useWords();
  const { advice } = words.plan;
  const wide = useWide(42);
  const spelled = spelledOut(plan, move.patch);
  return (
    <div class="plan-move">
      <p class="dim">{title}</p>
      <h2 class="move">{sentence(patchName(words, move.patch))}</h2>
      <p class="where-to">{whereTo(words, plan, move)}</p>
      <div class="move-parts">
        {spelled.map((one) => (
          <figure key={one.part.id}>
            {spelled.length > 1 && <figcaption>{nameOf(words, one.part)}</figcaption>}
            <PinDrawing spelled={one} wide={wide} />
            <ul class="pin-words">
              {pinWords(words, one).map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </figure>
        ))}
        <div class="weigh">
          <p class="stock">{move.toMake ? advice.toMake : advice.shelf}</p>
          <ul>
            {weighed(words, plan, move).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          <p class="first">{advice.volumeFirst}</p>
          <button type="button" class="main" onClick={() => take(move.patch)}>
            {advice.use}
          </button>
        </div>
      </div>
    </div>
  );
}

/** From which socket into which. */
function whereTo(words: Words, plan: Plan, { patch: { plugged } }: Recommendation): string {
  const out = plugged.filter(({ into }) => into === plan.from.id).map(({ socket }) => socket);
  const into = plugged.filter((end) => end.into === plan.into.id).map(({ socket }) => socket);
  return words.plan.advice.whereTo(
    outputsWords(words, plan, out),
    [...into].sort().map(words.marks.socket),
    nameOf(words, plan.into),
  );
}

/** What it hangs on, and what is not as it might be. */
function weighed(words: Words, plan: Plan, { prediction }: Recommendation): readonly string[] {
  const loud = levelWords(words, prediction);
  return [
    ...prediction.ties.map((tie) => sentence(words.language.patching.ties[tie])),
    ...(loud === words.planFacts.level.asGiven ? [] : [loud]),
    ...(prediction.hum === "none" ? [] : [humWords(words, prediction, plan)]),
    ...(prediction.strains.length === 0 ? [] : [strainWords(words, prediction)]),
    ...toneWords(words, prediction),
  ];
}

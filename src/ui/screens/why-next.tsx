import type { Choice, Chosen } from "#core/diagnosis/choice.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { doText } from "#core/report/do-text.ts";
import { capital, minutes } from "#core/report/phrases.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Language } from "#core/words/language.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";

/** How many other steps stand beside the one that was chosen. */
const mostShown = 3;

/** The minutes that are expected to be left, and on demand what else was weighed. */
export function WhyNext({
  derived,
  choice,
}: {
  readonly derived: Derived;
  readonly choice: Chosen | undefined;
}) {
  const { language, verdict } = useWords();
  if (choice === undefined) return null;
  const { best, others, seconds } = choice;
  const rest = others.filter((one) => one !== best).slice(0, mostShown);
  return (
    <div class="why-next">
      <p>{verdict.left(capital(minutes(language, seconds)))}</p>
      {best && rest.length > 0 && (
        <details>
          <summary>{verdict.whyNext}</summary>
          <p class="dim">{verdict.expected}</p>
          <ol>
            {[best, ...rest].map((one, at) => (
              <li key={JSON.stringify(one.doing)} class={at === 0 ? "first" : ""}>
                {verdict.step(
                  stepWords(language, derived.model, one),
                  at === 0 ? minutes(language, seconds) : later(verdict, one.seconds - seconds),
                )}
              </li>
            ))}
          </ol>
        </details>
      )}
    </div>
  );
}

/** A step that was weighed, in words. */
export const stepWords = (language: Language, model: Model, { doing }: Choice): string =>
  capital(
    doing.do === "ask"
      ? askedWords(language, model, doing.asked)
      : doText(language, model, doing.move),
  );

/** How much longer it takes than what was chosen. */
const later = ({ asLong, longer }: Words["verdict"], more: Seconds): string =>
  more < 0.5 ? asLong : longer(Math.round(more));

import type { Choice, Chosen } from "#core/diagnosis/choice.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { doText } from "#core/report/do-text.ts";
import { capital, minutes } from "#core/report/phrases.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Seconds } from "#core/units/units.ts";

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
  if (choice === undefined) return null;
  const { best, others, seconds } = choice;
  const rest = others.filter((one) => one !== best).slice(0, mostShown);
  return (
    <div class="why-next">
      <p>{`${capital(minutes(seconds))} to a working rig`}</p>
      {best && rest.length > 0 && (
        <details>
          <summary>Why this next</summary>
          <p class="dim">Expected to a working rig, beginning with:</p>
          <ol>
            {[best, ...rest].map((one, at) => (
              <li key={JSON.stringify(one.doing)} class={at === 0 ? "first" : ""}>
                {`${stepWords(derived, one)}: ${at === 0 ? minutes(seconds) : later(one.seconds - seconds)}`}
              </li>
            ))}
          </ol>
        </details>
      )}
    </div>
  );
}

const stepWords = ({ model }: Derived, { doing }: Choice): string =>
  capital(doing.do === "ask" ? askedWords(model, doing.asked) : doText(model, doing.move));

/** How much longer it takes than what was chosen. */
const later = (more: Seconds): string =>
  more < 0.5 ? "about as long" : `${Math.round(more)} s longer`;

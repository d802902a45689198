import type { Hunt } from "#core/noises/hunt.ts";
import { causeWords } from "#core/report/noise-words.ts";
import { capital, inHundred } from "#core/report/phrases.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Ready } from "./ready.ts";

/** So many stand beside what is asked. */
const mostShown = 4;
/** And none that is less likely. */
const least = 0.02;

interface Props {
  readonly ready: Ready;
  readonly hunt: Hunt;
  readonly heading: string;
  /** The first was said already. */
  readonly after?: number;
}

/** Where it may come in, each with so many in a hundred. */
export function NoiseSuspects({ ready: { derived }, hunt, heading, after = 0 }: Props) {
  const { language } = useWords();
  const shown = hunt.suspects
    .slice(after, after + mostShown)
    .filter(({ probability }) => probability >= least);
  if (shown.length === 0) return null;
  return (
    <>
      <h2>{heading}</h2>
      <ul class="noise-suspects">
        {shown.map(({ causes, probability }) => {
          const words = causes.map((one) => causeWords(language, derived.rig, one, hunt.noise));
          return (
            <li key={words[0]}>
              {capital(language.report.or(words))}, {inHundred(language, probability)}.
            </li>
          );
        })}
      </ul>
    </>
  );
}

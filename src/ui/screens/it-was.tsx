import type { Model } from "#core/diagnosis/model.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { inHundred } from "#core/report/phrases.ts";
import { useWords } from "#ui/words/use-words.ts";

/** How many that may have been it are named. */
const mostShown = 3;
const sure = 0.95;

/** What was wrong before somebody's move took it away. */
export function ItWas({
  model,
  culprits,
}: {
  readonly model: Model;
  readonly culprits: readonly Suspect[];
}) {
  const { language, verdict } = useWords();
  const [first, ...rest] = culprits
    .slice(0, mostShown)
    .flatMap(({ group: { faults }, probability }) => {
      const [fault] = faults;
      if (fault === undefined) return [];
      const one = faultWords(language, model, fault);
      const text = faults.length > 1 ? verdict.orMore(one, faults.length - 1) : one;
      return [{ text, probability, odds: inHundred(language, probability) }];
    });
  if (first === undefined) return null;
  const said = first.probability < sure ? verdict.likelyWas : verdict.itWas;
  return (
    <>
      <p class="it-was">{said(first.text, first.odds)}</p>
      {rest.length > 0 && <p class="dim">{verdict.orWas(rest)}</p>}
    </>
  );
}

interface AsideProps {
  readonly parts: readonly string[];
  readonly onPutBack: (part: string) => void;
}

/** What was laid aside is not forgotten; putting it back tells whether it was that, or the plugging. */
export function Aside({ parts, onPutBack }: AsideProps) {
  const { language, verdict } = useWords();
  return (
    <>
      {parts.map((part) => (
        <p key={part} class="aside">
          {`${verdict.aside(language.names.alone(part))} `}
          <button type="button" class="quiet" onClick={() => onPutBack(part)}>
            {verdict.putBack}
          </button>
        </p>
      ))}
    </>
  );
}

import { faultWords } from "#core/report/fault-words.ts";
import type { Derived } from "#core/session/derive.ts";
import { useWords } from "#ui/words/use-words.ts";

/** On demand: what answers as a healthy chain does on this way, and what no check here can tell. */
export function NotTested({
  derived,
  position,
}: {
  readonly derived: Derived;
  readonly position: string;
}) {
  const { language, verdict } = useWords();
  const { model, groups } = derived;
  const way = model.wayTo(position);
  const unheard = groups
    .filter(({ inaudible, branch }) => inaudible && way.includes(branch))
    .flatMap(({ faults }) => faults.map((fault) => faultWords(language, model, fault)));
  return (
    <details>
      <summary>{verdict.notTested}</summary>
      <ul>
        {[...new Set([...unheard, ...language.neverTested])].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}

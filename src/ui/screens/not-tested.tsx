import { faultWords } from "#core/report/fault-words.ts";
import type { Derived } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";

/** On demand: what answers as a healthy chain does on this way, and what no check here can tell. */
export function NotTested({
  derived,
  position,
}: {
  readonly derived: Derived;
  readonly position: string;
}) {
  const { model, groups } = derived;
  const way = model.wayTo(position);
  const unheard = groups
    .filter(({ inaudible, branch }) => inaudible && way.includes(branch))
    .flatMap(({ faults }) => faults.map((fault) => faultWords(model, fault)));
  return (
    <details>
      <summary>What was not tested</summary>
      <ul>
        {[...new Set([...unheard, ...english.neverTested])].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}

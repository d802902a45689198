import { faultWords } from "#core/report/fault-words.ts";
import { neverTestedAt } from "#core/report/never-tested.ts";
import type { Derived } from "#core/session/derive.ts";
import { askedIn } from "#core/session/noises.ts";
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
  const here = derived.rig.positions.filter(({ id }) => id === position);
  const never = neverTestedAt(language, here, askedIn(derived));
  return (
    <details>
      <summary>{verdict.notTested}</summary>
      <ul>
        {[...new Set([...unheard, ...never])].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}

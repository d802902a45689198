import type { Model } from "#core/diagnosis/model.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { inHundred } from "#core/report/phrases.ts";
import { standInFor } from "#core/rig/arranged.ts";
import { chainTo } from "#core/rig/chain.ts";
import type { BuiltRig } from "#core/rig/rig.ts";

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
  const [first, ...rest] = culprits
    .slice(0, mostShown)
    .flatMap(({ group: { faults }, probability }) => {
      const [fault] = faults;
      const more = faults.length > 1 ? `, or ${faults.length - 1} more like it` : "";
      return fault ? [{ text: `${faultWords(model, fault)}${more}`, probability }] : [];
    });
  if (first === undefined) return null;
  return (
    <>
      <p class="it-was">{`${first.probability < sure ? "Most likely it was" : "It was"}: ${first.text} (${inHundred(first.probability)}).`}</p>
      {rest.length > 0 && (
        <p class="dim">
          {`Or: ${rest.map(({ text, probability }) => `${text} (${inHundred(probability)})`).join("; ")}.`}
        </p>
      )}
    </>
  );
}

/** Parts of which a good one stands in on the way to a position. */
export const laidAside = (rig: BuiltRig, position: string): readonly string[] => {
  const way = new Set(chainTo(rig, position).map(({ part }) => part));
  return rig.parts.map(({ id }) => id).filter((id) => way.has(standInFor(id)));
};

interface AsideProps {
  readonly parts: readonly string[];
  readonly onPutBack: (part: string) => void;
}

/** What was laid aside is not forgotten; putting it back tells whether it was that, or the plugging. */
export const Aside = ({ parts, onPutBack }: AsideProps) => (
  <>
    {parts.map((part) => (
      <p key={part} class="aside">
        {`${part} stays aside: replace it or mend it. `}
        <button type="button" class="quiet" onClick={() => onPutBack(part)}>
          put it back: does it return?
        </button>
      </p>
    ))}
  </>
);

import type { Suspect } from "#core/diagnosis/suspects.ts";
import { turning } from "#core/diagnosis/turning.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { inHundred } from "#core/report/phrases.ts";
import { turningWords } from "#core/report/reason-words.ts";
import type { Derived } from "#core/session/derive.ts";
import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly leading: Suspect;
  readonly rest: readonly Suspect[];
  readonly derived: Derived;
  readonly position: string;
}

/** The other suspects, each with what would tell it from the first. */
export function Others({ leading, rest, derived: { model }, position }: Props) {
  const { language, verdict } = useWords();
  if (rest.length === 0) return null;
  return (
    <>
      <h2>{verdict.notRuledOut}</h2>
      <ul>
        {rest.map(({ group, probability }) => {
          const [fault] = group.faults;
          const turn = turning(model, leading.group, group, position);
          return (
            fault && (
              <li key={fault.id}>
                {faultWords(language, model, fault)}, {inHundred(language, probability)}.{" "}
                <span class="dim">
                  {turn
                    ? verdict.toldBy(turningWords(language, model, turn))
                    : verdict.nothingTells}
                </span>
              </li>
            )
          );
        })}
      </ul>
    </>
  );
}

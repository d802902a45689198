import { separating } from "#core/diagnosis/separating.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import type { Derived } from "#core/session/derive.ts";
import { faultWords } from "#ui/parts/fault-words.ts";
import { inHundred } from "#ui/parts/phrases.ts";
import { askedWords } from "#ui/parts/told.ts";

interface Props {
  readonly leading: Suspect;
  readonly rest: readonly Suspect[];
  readonly derived: Derived;
  readonly position: string;
}

/** The other suspects, each with what would tell it from the first. */
export function Others({ leading, rest, derived: { model }, position }: Props) {
  if (rest.length === 0) return null;
  return (
    <>
      <h2>Not ruled out</h2>
      <ul>
        {rest.map(({ group, probability }) => {
          const [fault] = group.faults;
          const asked = separating(model, leading.group, group, position);
          return (
            fault && (
              <li key={fault.id}>
                {faultWords(model, fault)}, {inHundred(probability)}.{" "}
                <span class="dim">
                  {asked
                    ? `Told apart by: ${askedWords(model, asked)}.`
                    : "Nothing here tells it apart."}
                </span>
              </li>
            )
          );
        })}
      </ul>
    </>
  );
}

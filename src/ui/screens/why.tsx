import type { Group } from "#core/diagnosis/groups.ts";
import { reasonsFor } from "#core/diagnosis/why.ts";
import { reasonWords } from "#core/report/reason-words.ts";
import type { Derived } from "#core/session/derive.ts";
import { useWords } from "#ui/words/use-words.ts";

/** On demand: what this fault would have made likely, against what was said, finding by finding. */
export function Why({ derived, group }: { readonly derived: Derived; readonly group: Group }) {
  const { language, verdict } = useWords();
  const { model, happenings } = derived;
  return (
    <details>
      <summary>{verdict.why}</summary>
      <ul class="reasons">
        {reasonsFor(model, group, happenings)
          .flatMap((reason) => reasonWords(language, model, reason))
          .map((text) => (
            <li key={text}>{text}</li>
          ))}
      </ul>
    </details>
  );
}

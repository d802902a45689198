import { twistAnswers } from "#core/checks/twist.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { type Reason, reasonsFor } from "#core/diagnosis/why.ts";
import type { Derived } from "#core/session/derive.ts";
import { inHundred } from "#ui/parts/phrases.ts";
import { answerWords, askedWords } from "#ui/parts/told.ts";

/** On demand: what this fault would have made likely, against what was said, finding by finding. */
export function Why({ derived, group }: { readonly derived: Derived; readonly group: Group }) {
  const { model, happenings } = derived;
  return (
    <details>
      <summary>Why</summary>
      <ul class="reasons">
        {reasonsFor(model, group, happenings)
          .flatMap((reason) => reason.answers.map((answer) => reasonWords(model, reason, answer)))
          .map((text) => (
            <li key={text}>{text}</li>
          ))}
      </ul>
    </details>
  );
}

function reasonWords(model: Model, { asked }: Reason, answer: Reason["answers"][number]): string {
  const all = lengthOf(asked, answer.question);
  const given = answerWords(model, answer.given, all);
  const question = asked.check === "pair" ? `, ${answer.question}` : "";
  const place = `${askedWords(model, asked)}${question}`;
  if (answer.given.includes(answer.predicted)) return `${place}: ${given}, as it would be.`;
  return `${place}: ${given}, where it would be ${answerWords(model, [answer.predicted], 0)} (${inHundred(answer.likelihood)} for what was said).`;
}

function lengthOf(asked: Reason["asked"], question: string): number {
  if (asked.check === "twist") return twistAnswers.length;
  if (!("position" in asked) || asked.check === "matrix") return 0;
  return questionsOf(asked).find(({ name }) => name === question)?.answers.length ?? 0;
}

import { useWords } from "#ui/words/use-words.ts";

/** On demand: what a hand on plugs and boxes has to mind. */
export function PlanCare() {
  const { language, plan } = useWords();
  return (
    <details class="care">
      <summary>{plan.care}</summary>
      <ul>
        {language.patching.care.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </details>
  );
}

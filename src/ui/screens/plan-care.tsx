import { english } from "#core/words/english.ts";

/** On demand: what a hand on plugs and boxes has to mind. */
export const PlanCare = () => (
  <details class="care">
    <summary>Before a hand touches a plug</summary>
    <ul>
      {english.patching.care.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </details>
);

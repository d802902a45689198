import { perMilliwattOf, perVolt, perVoltOf } from "#core/level/sensitivity.ts";
import type { Feed } from "#core/level/stages.ts";
import { useWords } from "#ui/words/use-words.ts";

/** Why the sensitivity should be looked at again, with what it would change. */
export function SensitivityDoubted({ worn }: { readonly worn: Feed["worn"] }) {
  const { levelNumbers: levels, figures } = useWords();
  const { doubt, sensitivity, unit, ohms } = worn;
  if (doubt === undefined) return null;
  const { value, low, high } = perVolt(sensitivity.typical, unit, ohms);
  const whole = (number: number) => figures.fixed(number, 0);
  const said = {
    "unit not said": () =>
      value - low > high - value
        ? levels.doubt.less(whole(value - low))
        : levels.doubt.more(whole(high - value)),
    "too loud for a milliwatt": () =>
      levels.doubt.notOfMilliwatt(whole(perVoltOf(sensitivity.typical, ohms))),
    "too soft for a volt": () =>
      levels.doubt.notOfVolt(whole(perMilliwattOf(sensitivity.typical, ohms))),
  };
  return (
    <p class="doubted" role="status">
      {said[doubt]()}
    </p>
  );
}

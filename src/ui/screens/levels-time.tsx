import { allowed, type RuleName, rules } from "#core/level/exposure.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { AtLevels } from "./use-levels.ts";

const shown = ["day", "week", "children's week"] as const satisfies readonly RuleName[];

/** How much time a rule counts at all, hours. */
const whole: Readonly<Record<(typeof shown)[number], number>> = {
  day: 24,
  week: 168,
  "children's week": 168,
};

/** How long it may last at this level, by published rules, and what that leaves out. */
export function LevelsTime({ at }: { readonly at: AtLevels }) {
  const words = useWords();
  const { levelsMore: levels, figures } = words;
  const { value, low, high } = at.told.level;
  return (
    <details>
      <summary>{levels.time.question(longOf(words, value, "day"))}</summary>
      <p class="note">{levels.time.at(figures.fixed(value, 0))}</p>
      <ul class="rules">
        {shown.map((rule) => (
          <li key={rule}>
            <strong>{longOf(words, value, rule)}</strong>{" "}
            {longOf(words, high, rule) !== longOf(words, low, rule) &&
              `(${levels.time.between(longOf(words, high, rule), longOf(words, low, rule))}) `}
            <span>{levels.time.rules[rule]}</span>
          </li>
        ))}
      </ul>
      <p class="note">{levels.time.leftOut}</p>
      <p>{levels.time.stop}</p>
    </details>
  );
}

/** Minutes from here on are told in steps of five. */
const coarse = 60;

function longOf(
  { levelsMore: levels }: Words,
  level: number,
  rule: (typeof shown)[number],
): string {
  const hours = allowed(rules[rule], level) / 3600;
  if (!(hours < whole[rule])) return levels.time.all[rule];
  const minutes = hours * 60;
  if (minutes < 1) return levels.time.under;
  if (minutes < coarse) return levels.time.long(0, Math.round(minutes));
  const rounded = 5 * Math.round(minutes / 5);
  return levels.time.long(Math.floor(rounded / 60), rounded % 60);
}

import { useMemo, useState } from "preact/hooks";
import { allowed, doseOfAll, type RuleName, rules } from "#core/level/exposure.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { derive } from "#core/session/derive.ts";
import { soundedIn } from "#core/session/exposed.ts";
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
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
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
      {open && <Tests at={at} />}
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

/** The session's own test signals, as loud as they would be with the knobs as they stand. */
function Tests({ at: { held, position, told } }: { readonly at: AtLevels }) {
  const { levelsMore: levels, figures } = useWords();
  const { log } = held.page;
  const sounded = useMemo(() => {
    const derived = derive(log);
    return derived ? soundedIn(derived).filter((one) => one.position === position) : [];
  }, [log, position]);
  if (sounded.length === 0) return <p class="note">{levels.time.noTests}</p>;
  const heard = sounded.map(({ level, seconds }) => ({
    level: told.level.value + level - usualProgramme.level,
    seconds,
  }));
  const most = Math.max(...heard.map(({ level }) => level));
  const share = 100 * doseOfAll(rules.day, heard);
  return (
    <p class="note">
      {levels.time.tests(
        figures.fixed(most, 0),
        share < least ? levels.time.underShare : levels.time.share(figures.fixed(share, 1)),
      )}
    </p>
  );
}

/** Less of a day's measure is not told in numbers, hundredths. */
const least = 0.1;

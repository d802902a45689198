import { adviceFor, hissOf, levelOf, ruleOfThumb, withKnobs } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { wantedLevels } from "#core/level/heard.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { anyTold } from "#core/level/way.ts";
import type { Decibels } from "#core/units/units.ts";
import type { AtLevels } from "./use-levels.ts";

/** Where the knobs should stand, and what that gives. */
interface Targets {
  readonly knobs: readonly (number | undefined)[];
  readonly hiss: Decibels;
  readonly level: Decibels;
  readonly short: Decibels;
  /** Nobody told a number of any box: it is the rule of thumb. */
  readonly byThumb: boolean;
}

export const wantedIn = ({ view }: Pick<AtLevels, "view">): Decibels =>
  wantedLevels[view.wanted ?? "music"];

/** As the numbers have it; where there are none, as people who know none do. */
export function targetsFor(at: AtLevels): Targets {
  const { feed } = at.way;
  const wanted = wantedIn(at);
  const byThumb = !anyTold(feed);
  const advice = adviceFor(feed, usualProgramme, wanted);
  const knobs = byThumb ? ruleOfThumb(feed, usualProgramme, wanted) : advice.knobs;
  const then = atEars(withKnobs(feed, knobs), usualProgramme);
  return { knobs, hiss: hissOf(then), level: levelOf(then), short: advice.short, byThumb };
}

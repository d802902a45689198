import { adviceFor, hissOf, levelOf, ruleOfThumb, withKnobs } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { wantedLevels } from "#core/level/heard.ts";
import { type Feed, usualProgramme } from "#core/level/stages.ts";
import { anyTold } from "#core/level/way.ts";
import type { Decibels } from "#core/units/units.ts";
import type { LevelsView } from "./levels-view.ts";

/** Where the knobs should stand, and what that gives. */
export interface Targets {
  readonly knobs: readonly (number | undefined)[];
  readonly hiss: Decibels;
  readonly level: Decibels;
  readonly short: Decibels;
  /** Where they stand by the rule of thumb, as long as nobody told a number of any box. */
  readonly byThumb: Omit<Targets, "short" | "byThumb"> | undefined;
}

export const wantedIn = ({ wanted = "music" }: Pick<LevelsView, "wanted">): Decibels =>
  wantedLevels[wanted];

/** As the numbers have it, those that nobody told as is usual. */
export function targetsFor(feed: Feed, wanted: Decibels): Targets {
  const { knobs, short } = adviceFor(feed, usualProgramme, wanted);
  const thumb = anyTold(feed) ? undefined : ruleOfThumb(feed, usualProgramme, wanted);
  return { ...stands(feed, knobs), short, byThumb: thumb && stands(feed, thumb) };
}

function stands(feed: Feed, knobs: Targets["knobs"]) {
  const then = atEars(withKnobs(feed, knobs), usualProgramme);
  return { knobs, hiss: hissOf(then), level: levelOf(then) };
}

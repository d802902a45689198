import { earCheck } from "#core/checks/catalogue.ts";
import { earChecks } from "#core/checks/check.ts";
import type { DecibelsFullScale, Seconds } from "#core/units/units.ts";
import type { Derived } from "./derive.ts";

/** A test signal that was heard: its level, and for how long at most. */
export interface Sounded {
  readonly position: string;
  readonly level: DecibelsFullScale;
  readonly seconds: Seconds;
}

/**
 * The test signals of a session, as they were answered: each for as long as its check takes with the answer. Whoever hangs on the same output heard those of
 * the others too, as long as they wore theirs; what was played and not answered is not in it.
 */
export function soundedIn({ told }: Derived): readonly Sounded[] {
  return told.flatMap(({ entry, happening }) => {
    if (happening.kind !== "finding" || entry.entry !== "finding") return [];
    const { asked } = happening.finding;
    const check = earChecks.find((name) => name === asked.check);
    if (check === undefined || !("position" in asked) || entry.level === undefined) return [];
    return [{ position: asked.position, level: entry.level, seconds: earCheck(check).seconds }];
  });
}

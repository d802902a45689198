import type { Between } from "#core/level/spread.ts";
import { type Feed, type Stage, usualProgramme } from "#core/level/stages.ts";
import { knobSetting, saysOfLevels } from "#core/level/told.ts";
import { anyTold, reckoned, type Way, wayTo } from "#core/level/way.ts";
import type { Move } from "#core/rig/moves.ts";
import type { BuiltRig, Rig } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";
import { rigNow } from "#core/session/noises.ts";

/** How the knobs on the way to a position stand, and how loud that should be. */
export interface SheetLevel {
  /** From the source on, those that somebody set. */
  readonly knobs: readonly SheetKnob[];
  /** At the louder ear, dB SPL, of a programme as desks are lined up for: reckoned, never measured. Nothing where a knob is a guess, or no number of the gear was typed. */
  readonly ear: Between | undefined;
}

/** A knob that somebody said the place of. */
export interface SheetKnob {
  readonly part: string;
  readonly socket: string;
  /** From nought to one. */
  readonly up: number;
}

const unsaid: SheetLevel = { knobs: [], ear: undefined };

/** What is said of levels on the way to a position as moves have left it. Of what was put in since the rig was drawn no knob and no number is known. */
export function levelOf(
  derived: Derived,
  position: string,
  sinceDrawn: readonly Move[],
): SheetLevel {
  const rig = rigNow(derived);
  if (!rig.parts.some(({ settings }) => saysOfLevels(settings))) return unsaid;
  const way = wayTo(rig, position);
  if (way === undefined) return unsaid;
  const fresh = freshIn(rig, derived.rig, sinceDrawn);
  const stages = way.feed.stages.filter(({ part }) => !fresh.has(part));
  const knobs = stages.flatMap((stage) => knobIn(rig, stage));
  return { knobs, ear: isKnown(way.feed, knobs, fresh) ? earOf(way) : undefined };
}

/** What is not in the drawing but stands in for another, and what was replaced since. */
const freshIn = (now: BuiltRig, drawn: Rig, moves: readonly Move[]): ReadonlySet<string> =>
  new Set([
    ...now.parts.map(({ id }) => id).filter((id) => !drawn.parts.some((one) => one.id === id)),
    ...moves.flatMap((one) => (one.move === "replaced" ? [one.place] : [])),
  ]);

function knobIn({ parts }: BuiltRig, { part, socket, knob }: Stage): readonly SheetKnob[] {
  const settings = parts.find(({ id }) => id === part)?.settings;
  const said = typeof settings?.[knobSetting(socket)] === "number";
  return said && knob !== undefined ? [{ part, socket, up: knob }] : [];
}

/** Every knob was set, every box is the one that was drawn, and some number of the gear was typed. */
const isKnown = (feed: Feed, knobs: readonly SheetKnob[], fresh: ReadonlySet<string>): boolean =>
  feed.stages.filter(({ knob }) => knob !== undefined).length === knobs.length &&
  [feed.worn, ...feed.stages].every(({ part }) => !fresh.has(part)) &&
  (feed.worn.sensitivity.told || anyTold(feed));

function earOf(way: Way): Between | undefined {
  const { level } = reckoned(way, usualProgramme);
  return [level.value, level.low, level.high].every(Number.isFinite) ? level : undefined;
}

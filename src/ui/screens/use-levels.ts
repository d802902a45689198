import { useMemo, useState } from "preact/hooks";
import { usualProgramme } from "#core/level/stages.ts";
import { knobSetting } from "#core/level/told.ts";
import { type Reckoned, turned, type Way, wayTo } from "#core/level/way.ts";
import { likelyGear, sharpened } from "#core/noises/sharpened.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { derive } from "#core/session/derive.ts";
import { type Log, rigIn } from "#core/session/log.ts";
import { noticedAt } from "#core/session/noises.ts";
import { type Put, put, redrawn } from "./levels-edit.ts";
import { type Targets, targetsFor, wantedIn } from "./levels-targets.ts";
import type { LevelsView } from "./levels-view.ts";
import type { Page } from "./page.ts";
import type { Held } from "./use-page.ts";

/** What the screen of levels shows, and what a press there may do. */
export interface AtLevels {
  readonly held: Held;
  readonly view: LevelsView;
  readonly rig: BuiltRig;
  /** The same as it lies in the log: whatever is drawn is drawn upon that. */
  readonly drawn: Rig;
  readonly position: string;
  /** As it is drawn, the knob in the hand as it stands there. */
  readonly way: Way;
  readonly told: Reckoned;
  /** How often something was noticed of the hiss here; the estimate of it goes by that too. */
  readonly noticed: number;
  /** Where its knobs should stand. */
  readonly targets: Targets;
  /** Turns the knob of a box; nothing is entered. */
  readonly turn: (stage: number, up: number) => void;
  /** Lets it go. */
  readonly letGo: (stage: number, up: number) => void;
  readonly put: (...all: readonly Put[]) => void;
  readonly draw: (rig: Rig) => void;
  readonly look: (next: Partial<LevelsView>) => void;
}

/** The knob in the hand, at a log: with the next entry it is let go. */
interface InHand {
  readonly log: Log;
  readonly stage: number;
  readonly up: number;
}

/** Nothing where nobody listens or nothing is fed. Circuits are solved once for each drawing; a knob in the hand solves none. */
export function useLevels(held: Held, view: LevelsView): AtLevels | undefined {
  const { page, change, edges } = held;
  const drawn = rigIn(page.log);
  const rig = useMemo(() => drawn && build(drawn), [drawn]);
  const position = drawn?.positions.find(({ id }) => id === view.position)?.id;
  const way = useMemo(
    () => (rig && position !== undefined ? wayTo(rig, position) : undefined),
    [rig, position],
  );
  const [hand, setHand] = useState<InHand>();
  const turning = hand?.log === page.log ? hand : undefined;
  const shown = useMemo(() => way && turnedBy(way, turning), [way, turning]);
  const wanted = wantedIn(view);
  const targets = useMemo(() => way && targetsFor(way.feed, wanted), [way, wanted]);
  const listened = useMemo(() => listenedAt(page.log, rig, position), [page.log, rig, position]);
  const told = useMemo(
    () => shown && sharpened(shown, listened.gear, usualProgramme),
    [shown, listened],
  );
  if (!(drawn && rig && position !== undefined && shown && told && targets)) return undefined;
  const enter = (...all: readonly Put[]) => change((one) => put(one, all, edges.now()));
  const turn = (stage: number, up: number) => setHand({ log: page.log, stage, up });
  return {
    held,
    view,
    rig,
    drawn,
    position,
    way: shown,
    told,
    noticed: listened.times,
    targets,
    turn,
    letGo: (stage, up) => {
      turn(stage, up);
      enter(...knobPuts(shown, { [stage]: up }));
    },
    put: enter,
    draw: (next) => change((one) => redrawn(one, next, edges.now())),
    look: (next) => change((one) => looked(one, next)),
  };
}

const looked = (page: Page, next: Partial<LevelsView>): Page =>
  page.view.screen === "levels" ? { ...page, view: { ...page.view, ...next } } : page;

/** What was noticed of hiss at a position, and the gear that goes with it. */
function listenedAt(log: Log, rig: BuiltRig | undefined, position: string | undefined) {
  const derived = derive(log);
  if (derived === undefined || rig === undefined || position === undefined)
    return { times: 0, gear: [] };
  const found = noticedAt(derived, position, "hiss");
  return { times: found.length, gear: likelyGear(rig, position, found) };
}

const turnedBy = (way: Way, hand: InHand | undefined): Way =>
  hand === undefined
    ? way
    : turned(
        way,
        way.feed.stages.map(({ knob }, at) => (at === hand.stage ? hand.up : knob)),
      );

/** Knobs as they are said of their parts, by the place of their box. */
export const knobPuts = (
  { feed }: Way,
  ups: Readonly<Record<number, number | undefined>>,
): readonly Put[] =>
  feed.stages.flatMap(({ part, socket, knob }, at): readonly Put[] => {
    const up = ups[at];
    return knob === undefined || up === undefined
      ? []
      : [{ part, name: knobSetting(socket), value: Math.round(1000 * up) / 1000 }];
  });

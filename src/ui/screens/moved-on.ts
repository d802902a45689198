import { asideAt } from "#core/rig/arranged.ts";
import { build } from "#core/rig/rig.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { lastToTake } from "#core/session/log.ts";
import { type Page, tookBack } from "./page.ts";
import { seatAsked, whereTo } from "./seat-state.ts";

/**
 * Once the position in hand became healthy, the next one, or the board where all the others are asked at once; nothing else changes. One where
 * something was mended or lies aside waits for somebody to read it, and so does the last.
 */
export function movedOn(before: Page, after: Page): Page {
  const { view } = after;
  if (view.screen !== "position" || view.microphone !== undefined) return after;
  const [was, is] = [derive(before.log), derive(after.log)];
  const { position } = view;
  if (was === undefined || is === undefined) return after;
  if (was.state(position) === "healthy" || !isDone(is, position)) return after;
  const to = whereTo(is);
  if (to.go === "all at once") return { ...after, view: { screen: "board", came: position } };
  if (to.go === "nowhere" || to.position === position) return after;
  return { ...after, view: { screen: "position", position: to.position, came: position } };
}

/** Healthy, with nothing to read about it. */
const isDone = (derived: Derived, position: string): boolean =>
  derived.state(position) === "healthy" &&
  derived.standing(position).culprits.length === 0 &&
  asideAt(build(derived.evidence.era.course.state.rig), position).length === 0;

/** The last answer taken back: where it was the one that led here, it is asked again where one came from; where it was that nobody is somewhere, there. */
export function wentBack(page: Page, at: number): Page {
  const after = tookBack(page, at);
  const { view } = page;
  const back = backAgain(page, after);
  if (back !== undefined) return { ...after, view: { screen: "position", position: back } };
  const came = "came" in view ? view.came : undefined;
  if (came === undefined || derive(page.log)?.state(came) !== "healthy") return after;
  if (derive(after.log)?.state(came) === "healthy") return after;
  return { ...after, view: { screen: "position", position: came } };
}

/** The position where somebody is after all, unless it is asked for the sake of the one in hand. */
function backAgain({ log, view }: Page, after: Page): string | undefined {
  const taken = lastToTake(log);
  const is = derive(after.log);
  if (view.screen !== "position" || taken?.entry !== "absent" || is === undefined) return undefined;
  const { position } = taken;
  if (seatAsked(is.standing(view.position).advice) === position) return undefined;
  return is.rig.positions.find(({ id }) => id === position)?.id;
}

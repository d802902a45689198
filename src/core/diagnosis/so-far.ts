import { catalogue } from "#core/checks/catalogue.ts";
import { slip } from "#core/checks/slips.ts";
import { instrumentAt } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import { isThere, livesOf } from "./course.ts";
import type { Evidence } from "./evidence.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";
import { troubleAt } from "./suspects.ts";

/** How little trouble may be left at a position called healthy. */
export const fitEnough: Probability = 0.03;

/**
 * The required checks not clearly answered at a position since anything on the way to it was touched; where an instrument stands, its
 * matrix, if it was not measured since.
 */
export function unanswered(
  { rig }: Model,
  evidence: Evidence,
  position: string,
): readonly string[] {
  if (instrumentAt(rig, position) !== undefined) return unmeasured(evidence, position);
  const clear = evidence.heard.filter(
    (one) =>
      one.position === position &&
      one.channel === evidence.nowAt(position) &&
      Math.min(...one.weights) < slip,
  );
  return catalogue
    .filter(({ required }) => required)
    .filter(({ questions }) =>
      questions.some((question) => clear.every((one) => one.question !== question)),
    )
    .map(({ name }) => name);
}

const unmeasured = (evidence: Evidence, position: string): readonly string[] =>
  timesMeasured(evidence, position) > 0 ? [] : ["matrix"];

/** How often an instrument measured a position since anything on the way to it was touched. */
export const timesMeasured = ({ measured, nowAt }: Evidence, position: string): number =>
  measured.filter((one) => one.position === position && one.channel === nowAt(position)).length;

/** The groups as moves have left them, of those on the way to a position: what a move cured is no suspect any more. */
export function living(
  groups: readonly Group[],
  { era }: Evidence,
  position: string,
): readonly Group[] {
  const way = era.onTheWay(position);
  const { touches, now } = era.course;
  const lives = (fault: RigFault) =>
    way.has(fault) && livesOf(fault, era.course).some((life) => isThere(life, now));
  const moved = touches.size > 0;
  return groups
    .filter(({ faults }) => faults.some((fault) => way.has(fault)))
    .map((group) => (moved ? { ...group, faults: group.faults.filter(lives) } : group))
    .filter(({ faults }) => faults.length > 0);
}

/** Other positions where all was heard and nothing is wrong. */
export const wellBeside = (
  model: Model,
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
): readonly string[] =>
  model.root.positions.filter(
    (one) =>
      one !== position &&
      unanswered(model, evidence, one).length === 0 &&
      troubleAt(model, beliefs, one) < fitEnough,
  );

/** Whether headphones that were turned round to see what changes were heard so: then they are turned back. */
export function isTurnedAndHeard({ era, heard, nowAt }: Evidence, position: string): boolean {
  const { positions } = era.course.state.rig;
  if (positions.find(({ id }) => id === position)?.turned !== true) return false;
  return heard.some((one) => one.position === position && one.channel === nowAt(position));
}

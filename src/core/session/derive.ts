import type { Happening } from "#core/checks/finding.ts";
import { type Standing, standingAt } from "#core/diagnosis/advice.ts";
import { type Beliefs, beliefsOf } from "#core/diagnosis/beliefs.ts";
import type { Evidence } from "#core/diagnosis/evidence.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import { type Group, groupsOf } from "#core/diagnosis/groups.ts";
import { type Model, modelOf } from "#core/diagnosis/model.ts";
import type { Rig } from "#core/rig/rig.ts";
import { type Log, rigIn } from "./log.ts";
import { type Told, toldOf } from "./still-there.ts";

/** How a position stands on the board. */
export type State = "not heard" | "begun" | "healthy" | "wrong" | "unsure" | "absent";

/** Everything that follows from a log. What it tells of things that are not drawn says nothing. */
export interface Derived extends Told {
  readonly rig: Rig;
  readonly model: Model;
  readonly groups: readonly Group[];
  readonly happenings: readonly Happening[];
  readonly evidence: Evidence;
  readonly beliefs: Beliefs;
  /** What is known of a position and what to do there; worked out when asked for, once. */
  readonly standing: (position: string) => Standing;
  readonly state: (position: string) => State;
}

const models = new WeakMap<Rig, { model: Model; groups: readonly Group[] }>();
const derived = new WeakMap<Log, Derived>();

/** The model of a rig, made once for each drawing. */
export function modelFor(rig: Rig): { model: Model; groups: readonly Group[] } {
  const known = models.get(rig);
  if (known !== undefined) return known;
  const model = modelOf(rig);
  const made = { model, groups: groupsOf(model) };
  models.set(rig, made);
  return made;
}

/** Derives everything from a log; nothing yet where no entry says what the rig is. Remembered by the log's identity. */
export function derive(log: Log): Derived | undefined {
  const known = derived.get(log);
  if (known !== undefined) return known;
  const rig = rigIn(log);
  if (rig === undefined) return undefined;
  const made = follows(rig, toldOf(modelFor(rig).model, log));
  derived.set(log, made);
  return made;
}

/** Everything that follows from what was told of a rig, or from the beginning of it. */
export function follows(rig: Rig, all: Told): Derived {
  const { model, groups } = modelFor(rig);
  const happenings = all.told.map(({ happening }) => happening);
  const evidence = evidenceOf(model, happenings, all.absent);
  const beliefs = beliefsOf(model, evidence);
  const standings = new Map<string, Standing>();
  const standing = (position: string): Standing => {
    const found = standings.get(position) ?? standingAt(model, groups, evidence, beliefs, position);
    standings.set(position, found);
    return found;
  };
  const heardAt = (position: string) => evidence.heard.some((one) => one.position === position);
  const state = (position: string): State => {
    if (all.absent.has(position)) return "absent";
    return heardAt(position) ? stateAt(standing(position)) : "not heard";
  };
  return { ...all, rig, model, groups, happenings, evidence, beliefs, standing, state };
}

/** How a position that was heard stands. */
function stateAt({ advice }: Standing): State {
  if (advice.advice === "healthy") return "healthy";
  if (advice.advice === "verdict") return advice.sure ? "wrong" : "unsure";
  return "begun";
}

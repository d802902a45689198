import type { Model } from "#core/diagnosis/model.ts";
import { build, type Log, type Rig } from "#core/index.ts";
import { type Arranged, arranged, asDrawn } from "#core/rig/arranged.ts";
import { holding } from "#core/session/log.ts";
import { aboutDrawings } from "#core/session/names-since.ts";
import { toldOf } from "#core/session/still-there.ts";
import { seatProblems } from "./answer-problems.ts";
import { findingProblems } from "./finding-problems.ts";
import { moveProblems } from "./move-problems.ts";
import { type Path, type Problem, pointer } from "./problem.ts";
import { rigProblems } from "./rig-problems.ts";

/** One entry, and where it stands in the case. */
export interface Placed {
  readonly entry: Log[number];
  readonly at: Path;
}

/** Ids that are taken twice, and entries taken back that are not there before. */
export function idProblems(placed: readonly Placed[]): readonly Problem[] {
  const met = new Set<string>();
  return placed.flatMap(({ entry, at }): Problem[] => {
    const { id } = entry;
    const twice: Problem[] = met.has(id)
      ? [{ path: [...at, "id"], expected: "an id that no entry before it has", found: id }]
      : [];
    const lost: Problem[] =
      entry.entry === "taken back" && !met.has(entry.taken)
        ? [
            {
              path: [...at, "taken"],
              expected: "the id of an entry before it",
              found: entry.taken,
            },
          ]
        : [];
    met.add(id);
    return [...twice, ...lost];
  });
}

/**
 * What findings and moves name that is not there when it is their turn. What was taken back is not asked; nor is what was entered before the rig was last
 * drawn anew, since it spoke of another drawing: where that says nothing of this one, it is left out.
 */
export function logProblems(model: Model, placed: readonly Placed[]): readonly Problem[] {
  const log = placed.map(({ entry }) => entry);
  const held = new Set(holding(log));
  const about = aboutDrawings(log);
  const anew = Math.max(
    0,
    log.findLastIndex((entry) => about.has(entry)),
  );
  const problems: Problem[] = [];
  let state = arrangedBy(model, log, anew);
  for (const { entry, at } of placed.slice(anew).filter((one) => held.has(one.entry))) {
    const amiss = namedBy(model, state, entry, at);
    problems.push(...amiss);
    if (entry.entry !== "move" || amiss.length > 0) continue;
    const next = arranged(state, entry.move);
    const broken = afterwards(next.rig, [...at, "move"]);
    problems.push(...broken);
    if (broken.length === 0) state = next;
  }
  return problems;
}

/** How the rig is arranged by the first entries of a log, as far as they speak of it as it is drawn in the end. */
function arrangedBy(model: Model, log: Log, entries: number): Arranged {
  const first = new Set(log.slice(0, entries));
  return toldOf(model, log).told.reduce(
    (state, { entry, happening }) =>
      first.has(entry) && happening.kind === "move" ? arranged(state, happening.move) : state,
    asDrawn(model.drawn),
  );
}

/** What one entry names that is not there. */
function namedBy(model: Model, state: Arranged, entry: Log[number], at: Path): readonly Problem[] {
  if (entry.entry === "finding")
    return findingProblems(model, build(state.rig), entry.finding, [...at, "finding"]);
  if (entry.entry === "absent") return seatProblems(build(state.rig), entry.position, at);
  return entry.entry === "move" || entry.entry === "cannot"
    ? moveProblems(build(state.rig), state, entry.move, [...at, "move"])
    : [];
}

/** A move that leaves a rig which cannot be, as headphones where a lead was. */
const afterwards = (rig: Rig, at: Path): readonly Problem[] =>
  rigProblems(rig, [])
    .slice(0, 1)
    .map(({ path, expected }) => ({
      path: at,
      expected: `a move that leaves ${expected} at ${pointer(path)} of the rig`,
    }));

import { type Finding, type Happening, isAnswered } from "#core/checks/finding.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { type Arranged, arranged, asDrawn, standInFor } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import { namesThrough } from "#core/rig/same-parts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { type Entry, holding, type Log } from "./log.ts";
import { findingIn, moveIn } from "./renamed.ts";

/** What happened in the names of the rig as it is drawn now, and the entries that speak of what is no longer drawn. */
export interface Told {
  readonly happenings: readonly Happening[];
  readonly leftOut: readonly Entry[];
}

/** Reads a log against the rig it draws in the end. Where it was drawn but once, all of it speaks of that. */
export function toldOf(model: Model, log: Log): Told {
  const entries = holding(log);
  const happened = entries.flatMap((entry) => {
    const happening = happeningOf(entry);
    return happening === undefined ? [] : [{ entry, happening }];
  });
  if (log.filter(({ entry }) => entry === "drawing").length < 2)
    return { happenings: happened.map(({ happening }) => happening), leftOut: [] };
  return againstNow(model, happened, drawnBefore(log, entries));
}

function happeningOf(entry: Entry): Happening | undefined {
  if (entry.entry === "finding") return { kind: "finding", finding: entry.finding };
  if (entry.entry === "cannot") return { kind: "cannot", move: entry.move };
  return entry.entry === "move" ? { kind: "move", move: entry.move } : undefined;
}

/** For each entry the drawings from the one that held when it was entered to the one that holds now. */
function drawnBefore(log: Log, entries: Log): ReadonlyMap<Entry, readonly Rig[]> {
  const since = new Map<Entry, readonly Rig[]>();
  let rigs: readonly Rig[] = [];
  for (const [at, entry] of log.entries()) {
    if (entry.entry === "drawing" || entry.entry === "taken back") {
      const then = holding(log.slice(0, at + 1)).findLast((one) => one.entry === "drawing");
      const later = entries.filter((one) => one.entry === "drawing" && log.indexOf(one) > at);
      const last = entries.findLast((one) => one.entry === "drawing");
      rigs = [...new Set([then, ...later, last])].flatMap((one) =>
        one?.entry === "drawing" ? [one.rig] : [],
      );
    }
    since.set(entry, rigs);
  }
  return since;
}

interface Happened {
  readonly entry: Entry;
  readonly happening: Happening;
}

function againstNow(
  model: Model,
  happened: readonly Happened[],
  since: ReadonlyMap<Entry, readonly Rig[]>,
): Told {
  const happenings: Happening[] = [];
  const leftOut: Entry[] = [];
  let state = asDrawn(model.drawn);
  for (const { entry, happening } of happened) {
    const now = spokenNow(happening, since.get(entry) ?? []);
    const next = now === undefined ? undefined : after(model, state, now);
    if (now === undefined || next === undefined) leftOut.push(entry);
    else {
      happenings.push(now);
      state = next;
    }
  }
  return { happenings, leftOut };
}

function spokenNow(happening: Happening, rigs: readonly Rig[]): Happening | undefined {
  const names = namesThrough(rigs);
  if (happening.kind === "finding") {
    const finding = findingIn(happening.finding, names);
    return finding && { ...happening, finding };
  }
  const move = moveIn(happening.move, names);
  return move && { ...happening, move };
}

/** How the rig is arranged after something that happened; nothing where it cannot have happened to this rig. */
function after(model: Model, state: Arranged, happening: Happening): Arranged | undefined {
  if (happening.kind === "finding")
    return isThere(model, state.rig, happening.finding) ? state : undefined;
  if (!canBe(state, happening.move)) return undefined;
  if (happening.kind === "cannot") return state;
  const next = arranged(state, happening.move);
  return next.rig === state.rig || rigTroubles(next.rig).length === 0 ? next : undefined;
}

/** Whether what was found is of something the rig has. */
function isThere({ looks }: Model, { parts }: Rig, finding: Finding): boolean {
  if (isAnswered(finding) && finding.asked.check === "look") {
    const { place } = finding.asked;
    return looks.some((look) => look.place === place);
  }
  if (!("part" in finding.asked)) return true;
  const { part } = finding.asked;
  return parts.some(({ id }) => id === part);
}

/** Whether a move is about what stands in the rig as it is arranged. */
function canBe({ rig, before }: Arranged, move: Move): boolean {
  const has = (part: string) => rig.parts.some(({ id }) => id === part);
  switch (move.move) {
    case "exchanged":
      return move.parts.every(has) && move.parts[0] !== move.parts[1];
    case "known good in":
      return has(move.part) && !has(standInFor(move.part));
    case "put back":
      return before.has(move.part);
    case "plugged anew":
    case "moved":
      return rig.plugged.some(({ part, plug }) => part === move.part && plug === move.plug);
    case "set":
      return has(move.part);
    case "set right":
    case "replaced":
    case "turned round":
      return true;
  }
}

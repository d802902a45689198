import { type Finding, type Happening, isAnswered, isNoticed } from "#core/checks/finding.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { type Arranged, arranged, asDrawn, standInFor } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { Names } from "#core/rig/same-parts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { type Entry, holding, type Log } from "./log.ts";
import { namesSince } from "./names-since.ts";
import { findingIn, moveIn } from "./renamed.ts";

/** Something that happened, in the names of the rig as it is drawn now, and the entry that tells it. */
export interface Spoken {
  readonly entry: Entry;
  readonly happening: Happening;
}

/** What a log tells of the rig as it is drawn now, and the entries that speak of what is not in it. */
export interface Told {
  readonly told: readonly Spoken[];
  /** The positions where nobody is. */
  readonly absent: ReadonlySet<string>;
  readonly leftOut: readonly Entry[];
}

/** Reads a log against the rig it draws in the end. */
export function toldOf(model: Model, log: Log): Told {
  const names = namesSince(log);
  const told: Spoken[] = [];
  const absent = new Set<string>();
  const leftOut: Entry[] = [];
  let state = drawnIn(model);
  for (const entry of holding(log).filter(isOfThings)) {
    const happening = happeningOf(entry, names(entry));
    const next = happening && after(model, state, happening);
    const nobody = nobodyAt(entry, names(entry));
    if (nobody !== undefined) absent.add(nobody);
    else if (happening === undefined || next === undefined) leftOut.push(entry);
    else told.push({ entry, happening });
    state = next ?? state;
  }
  return { told, absent, leftOut };
}

type OfThings = Extract<Entry, { readonly entry: "finding" | "move" | "cannot" | "absent" }>;

const isOfThings = (entry: Entry): entry is OfThings =>
  entry.entry !== "drawing" && entry.entry !== "titled" && entry.entry !== "taken back";

/** What an entry tells, in the names of the rig as it is drawn now; nothing where what it speaks of is not there. */
function happeningOf(entry: OfThings, names: Names): Happening | undefined {
  if (entry.entry === "absent") return undefined;
  if (entry.entry === "finding") {
    const finding = findingIn(entry.finding, names);
    return finding && { kind: "finding", finding };
  }
  const move = moveIn(entry.move, names);
  return move && { kind: entry.entry, move };
}

const nobodyAt = (entry: OfThings, { position }: Names): string | undefined =>
  entry.entry === "absent" ? position(entry.position) : undefined;

/** How the rig is arranged after something that happened; nothing where it cannot have happened to this rig. */
function after(model: Model, state: Arranged, happening: Happening): Arranged | undefined {
  if (happening.kind === "finding")
    return isThere(model, state.rig, happening.finding) ? state : undefined;
  if (happening.kind === "move") return movedTo(state, happening.move);
  return canBe(state, happening.move) ? state : undefined;
}

/** Where the moves of a rig begin. The same every time, so that what was worked out from there is found again at the next press. */
function drawnIn(model: Model): Arranged {
  const known = drawn.get(model) ?? asDrawn(model.drawn);
  drawn.set(model, known);
  return known;
}

const drawn = new WeakMap<Model, Arranged>();
const moved = new WeakMap<Arranged, Map<string, Arranged | undefined>>();

/** How the rig is arranged after a move, remembered: a long session is told anew at every press. */
function movedTo(state: Arranged, move: Move): Arranged | undefined {
  const known = moved.get(state) ?? new Map<string, Arranged | undefined>();
  moved.set(state, known);
  const key = JSON.stringify(move);
  if (!known.has(key)) known.set(key, moving(state, move));
  return known.get(key);
}

function moving(state: Arranged, move: Move): Arranged | undefined {
  if (!canBe(state, move)) return undefined;
  const next = arranged(state, move);
  return next.rig === state.rig || rigTroubles(next.rig).length === 0 ? next : undefined;
}

/** Whether what was found is of something the rig has. */
function isThere({ looks }: Model, { parts }: Rig, finding: Finding): boolean {
  if (isAnswered(finding) && finding.asked.check === "look") {
    const { place } = finding.asked;
    return looks.some((look) => look.place === place);
  }
  const named = isNoticed(finding) ? finding.asked.trial : finding.asked;
  if (!("part" in named)) return true;
  const { part } = named;
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

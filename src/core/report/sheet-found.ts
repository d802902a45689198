import type { Move } from "#core/rig/moves.ts";
import { clientId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, follows } from "#core/session/derive.ts";
import type { Spoken } from "#core/session/still-there.ts";
import type { Probability } from "#core/units/units.ts";
import { leadingAt, positionOf } from "./sheet-seats.ts";

/** A fault that was named by a verdict, or told by what cured it, and what became of it. */
export interface Found {
  readonly fault: RigFault;
  /** How many others no check here tells from it. */
  readonly alike: number;
  readonly probability: Probability;
  /** Where it was heard. */
  readonly positions: readonly string[];
  /** When it was named, milliseconds since 1970. */
  readonly at: number;
  /** A verdict named it; else a cure told it afterwards. */
  readonly named: boolean;
  readonly end: "mended" | "still there" | "not checked again" | "no longer suspected";
  /** After which moves the position was healthy, and when that was heard. */
  readonly mended: { readonly moves: readonly Move[]; readonly at: number } | undefined;
}

/** A stretch of a session: moves, what was found after them, and what followed from all until then. */
interface Stretch {
  readonly moves: readonly Move[];
  /** When each position was heard last in it. */
  readonly heard: ReadonlyMap<string, number>;
  readonly derived: Derived;
}

/** What a move took away is named where it is at least so likely: likelier than not. Common practice, no source. */
const likely: Probability = 0.5;

/**
 * Faults found and mended as the log grew. What is known changes with every finding, but what it comes to is asked only where somebody
 * turns from asking to moving, and at the end: there a verdict stood, if one did. Of each such place only the positions are looked at that
 * were heard since the last one.
 */
export function* foundIn(whole: Derived): Generator<void, readonly Found[], void> {
  const finding = new Finding();
  for (const stretch of stretchesOf(whole)) {
    finding.goOn(stretch);
    yield;
  }
  return finding.end(whole);
}

/** Cuts a session before each move that follows a finding. All of it is told of the rig as it is drawn now. */
function* stretchesOf(whole: Derived): Generator<Stretch> {
  const { rig, told } = whole;
  let from = 0;
  for (let at = 1; at <= told.length; at++) {
    if (at < told.length && (isFound(told[at]) || !isFound(told[at - 1]))) continue;
    const derived =
      at < told.length
        ? follows(rig, { told: told.slice(0, at), absent: new Set(), leftOut: [] })
        : whole;
    yield { ...readStretch(told.slice(from, at)), derived };
    from = at;
  }
}

const isFound = (one: Spoken | undefined): boolean => one?.happening.kind === "finding";

function readStretch(acts: readonly Spoken[]): Pick<Stretch, "moves" | "heard"> {
  const heard = new Map<string, number>();
  for (const { entry, happening } of acts) {
    const position = positionOf(happening);
    if (position !== undefined) heard.set(position, entry.at);
  }
  return {
    moves: acts.flatMap(({ happening }) => (happening.kind === "move" ? [happening.move] : [])),
    heard,
  };
}

/** A fault found, and every move since. */
type Open = Found & { readonly since: readonly Move[] };

/** What was found so far. */
class Finding {
  #found: Open[] = [];

  goOn({ moves, heard, derived }: Stretch): void {
    this.#found = this.#found.map((one) => ({ ...one, since: [...one.since, ...moves] }));
    for (const [position, at] of heard) {
      const state = derived.state(position);
      if (state === "wrong") this.#named(derived, position, at);
      if (state === "healthy") this.#well(derived, position, at, moves);
    }
  }

  end(whole: Derived): readonly Found[] {
    return this.#found.map(({ since, ...one }) =>
      one.mended === undefined ? { ...one, end: endOf(whole, one, since) } : one,
    );
  }

  #open = (position: string): readonly Open[] =>
    this.#found.filter((one) => one.mended === undefined && one.positions.includes(position));

  #change(one: Open, how: Partial<Open>): void {
    this.#found = this.#found.map((each) => (each === one ? { ...one, ...how } : each));
  }

  /** A verdict stands at a position. One that stood there before and is no suspect any more was mended, if a move took it away. */
  #named(derived: Derived, position: string, at: number): void {
    const wrong = leadingAt(derived, position);
    if (wrong === undefined || wrong.fault.part === clientId) return;
    const { fault, alike, probability } = wrong;
    for (const one of this.#open(position))
      if (one.fault.id !== fault.id && isCulprit(derived, position, one.fault)) this.#mend(one, at);
    const same = this.#found.find((one) => one.mended === undefined && one.fault.id === fault.id);
    if (same === undefined) {
      const positions = [position];
      const begun = { since: [], named: true, end: "still there", mended: undefined } as const;
      this.#found.push({ fault, alike, probability, positions, at, ...begun });
    } else if (!same.positions.includes(position))
      this.#change(same, { positions: [...same.positions, position] });
  }

  /** All that was wrong at a position is mended; what nobody had named is told by what cured it. */
  #well(derived: Derived, position: string, at: number, moves: readonly Move[]): void {
    const open = this.#open(position);
    for (const one of open) this.#mend(one, at);
    const [first] = derived.standing(position).culprits;
    const [fault] = first?.group.faults ?? [];
    if (open.length > 0 || first === undefined || fault === undefined) return;
    const same = this.#found.find((one) => one.fault.id === fault.id);
    if (same !== undefined) {
      if (!same.positions.includes(position))
        this.#change(same, { positions: [...same.positions, position] });
    } else if (first.probability >= likely && moves.length > 0) {
      const { probability, group } = first;
      const told = { positions: [position], at, named: false, since: moves } as const;
      const mended = { moves: about(moves, fault), at };
      const alike = group.faults.length - 1;
      this.#found.push({ fault, alike, probability, ...told, end: "mended", mended });
    }
  }

  #mend(one: Open, at: number): void {
    this.#change(one, { end: "mended", mended: { moves: about(one.since, one.fault), at } });
  }
}

const isCulprit = (derived: Derived, position: string, fault: RigFault): boolean =>
  derived
    .standing(position)
    .culprits.some(
      ({ group, probability }) =>
        probability >= likely && group.faults.some(({ id }) => id === fault.id),
    );

/** What became of a fault that nothing showed to be mended. */
function endOf(whole: Derived, { fault, positions }: Found, since: readonly Move[]): Found["end"] {
  const still = positions.some(
    (one) => whole.state(one) === "wrong" && leadingAt(whole, one)?.fault.id === fault.id,
  );
  if (still) return "still there";
  return since.length > 0 ? "not checked again" : "no longer suspected";
}

/** The moves that were about where a fault is; the last one where none was. */
function about(moves: readonly Move[], { part, place }: RigFault): readonly Move[] {
  const touched = moves.filter((move) =>
    placesOf(move).some((one) => one === part || one === place),
  );
  return touched.length > 0 ? touched : moves.slice(-1);
}

function placesOf(move: Move): readonly string[] {
  if (move.move === "exchanged") return move.parts;
  if ("place" in move) return [move.place];
  return "part" in move ? [move.part] : [move.position];
}

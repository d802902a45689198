import type { Tie } from "#core/parts/part.ts";
import { build, type Connection } from "#core/rig/rig.ts";
import type { Decibels } from "#core/units/units.ts";
import { candidates, type Reach } from "./candidates.ts";
import { type Ends, type Patch, rigOf } from "./patch.ts";
import { type Prediction, predictionAt, soundAt } from "./prediction.ts";
import { offTheShelf } from "./stock.ts";
import { gives, type Want } from "./wants.ts";

/** A patch that gives what is wanted, and what it costs. */
export interface Recommendation {
  readonly patch: Patch;
  readonly prediction: Prediction;
  /** Something has to be soldered or ordered. */
  readonly toMake: boolean;
  /** Less is better: parts to carry, plugs to push home, then what it hangs on. */
  readonly cost: number;
}

/** What each side effect weighs beside one lead off the shelf. Common practice, no source. */
const tieCost: Readonly<Record<Tie, number>> = {
  "main fader": 1.5,
  "monitor knob": 0.5,
  "headphone knob": 0,
  "send knob": 0.5,
  "solo takes it over": 0.3,
  "own mix": 0.5,
  "hiss past half": 0.2,
  "another device chosen": 0.2,
};

/**
 * The patches that give what is wanted, the simplest with the fewest side effects first; every one solved as a circuit. Adapters are thought
 * of only where no lead alone does it without strain. Those that could harm anything are left out, and those that strain an output where one
 * does not. `sockets` are the ones that may be used; all where left out.
 */
export function recommended(
  ends: Ends,
  want: Want,
  sockets?: readonly string[],
): readonly Recommendation[] {
  const search = recommending(ends, want, sockets);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
}

/** The same, with a rest after every few patches: each step takes some milliseconds, and whoever does not ask on stops it. */
export function* recommending(
  ends: Ends,
  want: Want,
  sockets?: readonly string[],
): Generator<void, readonly Recommendation[]> {
  const byLeads = yield* giving(ends, want, "leads", sockets);
  const fine = byLeads.some(({ prediction, toMake }) => prediction.strains.length === 0 && !toMake);
  const all = fine ? byLeads : [...byLeads, ...(yield* giving(ends, want, "adapters", sockets))];
  const calm = all.filter(({ prediction }) => prediction.strains.length === 0);
  return simplest((calm.length > 0 ? calm : all).sort((a, b) => a.cost - b.cost));
}

/** Patches between one rest and the next. */
const aStep = 12;

function* giving(
  ends: Ends,
  want: Want,
  reach: Reach,
  sockets: readonly string[] | undefined,
): Generator<void, Recommendation[]> {
  const found: Recommendation[] = [];
  let tried = 0;
  for (const patch of candidates(ends, reach, sockets)) {
    tried += 1;
    if (tried % aStep === 0) yield;
    const rig = build(rigOf(ends, patch));
    if (!gives(soundAt(rig, ends.into.id), want)) continue;
    const prediction = predictionAt(rig, ends.into.id);
    if (prediction.harms.length === 0) found.push(costed(ends, patch, prediction, want));
  }
  return found;
}

function costed(ends: Ends, patch: Patch, prediction: Prediction, want: Want): Recommendation {
  const toMake = patch.wires.some(({ kind }) => !offTheShelf.includes(kind));
  const ties = prediction.ties.filter((tie) => want !== "an own mix" || tie !== "own mix");
  const effects =
    ties.reduce((sum, tie) => sum + tieCost[tie], 0) +
    (prediction.strains.length > 0 ? 30 : 0) +
    (prediction.tone === "even" ? 0 : 10) +
    { none: 0, some: 0.3, loud: 15 }[prediction.hum] +
    levelCost(Math.max(...prediction.level));
  const cost = wiresCost(ends, patch) + effects;
  return { patch, prediction, toMake, cost: Math.round(1000 * cost) / 1000 };
}

/** Too little has to be made up; a little too much is turned down. */
const levelCost = (level: Decibels): number => (level < 0 ? -level / 6 : level / 24);

/** A lead that has to be made costs more than three off the shelf; a plug that stands against its marks, as much as one plug. */
const wiresCost = (ends: Ends, { wires, plugged }: Patch): number =>
  wires.reduce((sum, { kind }) => sum + (offTheShelf.includes(kind) ? 1 : 4), 0) +
  0.1 * plugged.reduce((sum, end) => sum + 1 + against(ends, end), 0);

/** The plug marked left in the socket marked right, and the end that belongs at the output in the input: as many as there are. */
function against({ from, into }: Ends, { plug, into: box, socket }: Connection): number {
  const [one, other] = [plug, socket].map((name) => /left|right/.exec(name)?.[0]);
  const crossed = one !== undefined && other !== undefined && one !== other;
  const reversed = box === { near: into.id, far: from.id }[plug.split(" ")[0] ?? ""];
  return Number(crossed) + Number(reversed);
}

/** Between the same sockets, what does it with more of the same is no better than what does it with less. */
function simplest(all: readonly Recommendation[]): readonly Recommendation[] {
  const kept: Recommendation[] = [];
  for (const one of all)
    if (!kept.some((less) => socketsOf(less) === socketsOf(one) && isPartOf(less, one)))
      kept.push(one);
  return kept;
}

/** Where a patch leaves and where it goes in. */
const socketsOf = ({ patch: { wires, plugged } }: Recommendation): string =>
  plugged
    .filter(({ into }) => !wires.some(({ id }) => id === into))
    .map(({ into, socket }) => `${into} ${socket}`)
    .sort()
    .join();

/** Whether the wires of one are among those of another, by their kinds. */
function isPartOf({ patch: less }: Recommendation, { patch: more }: Recommendation): boolean {
  const left = more.wires.map(({ kind }) => kind);
  return less.wires.every(({ kind }) => {
    const at = left.indexOf(kind);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

import type { Happening } from "#core/checks/finding.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { arranged, asDrawn } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { arriving, staying } from "#core/rig/staying.ts";
import { everOnTheWay, likelihoods } from "./oracle-findings.ts";

/** One way the world may have gone: the faults there in each epoch, and its odds against nothing ever having been wrong. */
interface World {
  readonly there: readonly (readonly RigFault[])[];
  readonly odds: number;
}

/**
 * The chance of every fault being there now, by writing down every world there may be: every set of faults at the start, every thing a move
 * may have cured or brought along, at most two faults ever on the way to any position. It shares with the diagnosis what a fault does, what a
 * listener says of a sound, and what a move does to one fault; nothing of how these are put together.
 */
export function enumerated(
  model: Model,
  rig: Rig,
  happenings: readonly Happening[],
): ReadonlyMap<string, number> {
  const rigs = rigsOf(rig, happenings);
  const built = rigs.map(build);
  const positions = rig.positions.map(({ id }) => id);
  const faults = model.branches.flatMap((branch) => branch.faults);
  const reaches = new Map(
    faults.map((fault) => [
      fault,
      positions.filter((position) => everOnTheWay(model, built, position, fault)),
    ]),
  );
  const moves = happenings.flatMap((one) => (one.kind === "move" ? [one.move] : []));
  const chance = likelihoods(model, built, happenings);
  const chances = new Map<string, number>();
  let all = 0;
  const count = ({ there, odds }: World): void => {
    const weight = odds * chance(there);
    all += weight;
    for (const { id } of there.at(-1) ?? []) chances.set(id, (chances.get(id) ?? 0) + weight);
  };
  const grow = (start: readonly RigFault[], rest: readonly RigFault[], odds: number): void => {
    for (const world of after(start, odds)) count(world);
    for (const [at, fault] of rest.entries()) {
      const next = [...start, fault];
      if (fits(next)) grow(next, rest.slice(at + 1), odds * against(fault));
    }
  };
  const fits = (some: readonly RigFault[]): boolean =>
    positions.every((position) => {
      const here = some.filter((fault) => reaches.get(fault)?.includes(position));
      return here.length <= 2 && compatible(here);
    });
  function* after(start: readonly RigFault[], odds: number): Generator<World> {
    yield* step({ there: [start], odds }, start, 0);
  }
  function* step(world: World, ever: readonly RigFault[], at: number): Generator<World> {
    const move = moves[at];
    if (move === undefined) {
      yield world;
      return;
    }
    const now = world.there.at(-1) ?? [];
    const before = rigs[at] ?? rig;
    const left = outcomes(now, (fault) => staying(fault, move, before));
    for (const { kept, come, odds } of left.flatMap((one) => arrivals(move, one, ever)))
      yield* step(
        { there: [...world.there, [...kept, ...come]], odds: world.odds * odds },
        [...ever, ...come],
        at + 1,
      );
  }
  /** What a move leaves, with nothing or one more that comes with it. */
  const arrivals = (move: Move, { kept, share }: Left, ever: readonly RigFault[]) => [
    { kept, come: [], odds: share },
    ...faults
      .filter((fault) => arriving(fault, move) > 0 && !kept.includes(fault))
      .filter((fault) => room([...ever, fault]) && compatible([...kept, fault]))
      .map((fault) => ({
        kept,
        come: [fault],
        odds: share * against(fault) * arriving(fault, move),
      })),
  ];
  const room = (some: readonly RigFault[]): boolean =>
    positions.every(
      (position) => some.filter((fault) => reaches.get(fault)?.includes(position)).length <= 2,
    );
  grow([], faults, 1);
  return new Map([...chances].map(([id, weight]) => [id, weight / all]));
}

const against = ({ weight }: RigFault): number => weight / (10_000 - weight);

/** What is not on the list stands alone in its stretch; one place has one fault. */
const compatible = (some: readonly RigFault[]): boolean =>
  some.every((a, at) =>
    some.slice(at + 1).every((b) => {
      if (isUnlisted(a) || isUnlisted(b)) return apart(a, b);
      return a.part !== b.part || a.slot !== b.slot;
    }),
  );

/** The stretches of two faults differ, as the fault that is not on the list tells of its own. */
const apart = (a: RigFault, b: RigFault): boolean => stretchOf(a) !== stretchOf(b);
const stretches = new WeakMap<RigFault, string>();
export const inStretch = (model: Model): void => {
  for (const branch of model.branches)
    for (const fault of branch.faults) stretches.set(fault, branch.positions.join());
};
const stretchOf = (fault: RigFault): string => stretches.get(fault) ?? "";

function rigsOf(rig: Rig, happenings: readonly Happening[]): readonly Rig[] {
  let state = asDrawn(rig);
  const rigs = [rig];
  for (const one of happenings)
    if (one.kind === "move") {
      state = arranged(state, one.move);
      rigs.push(state.rig);
    }
  return rigs;
}

interface Left {
  readonly kept: readonly RigFault[];
  readonly share: number;
}

/** What is left of some faults, each staying by its own chance. */
function outcomes(
  faults: readonly RigFault[],
  stays: (fault: RigFault) => number,
): readonly Left[] {
  const [first, ...rest] = faults;
  if (first === undefined) return [{ kept: [], share: 1 }];
  const p = stays(first);
  return outcomes(rest, stays).flatMap(({ kept, share }) => [
    ...(p > 0 ? [{ kept: [first, ...kept], share: share * p }] : []),
    ...(p < 1 ? [{ kept, share: share * (1 - p) }] : []),
  ]);
}

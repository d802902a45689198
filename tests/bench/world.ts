import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { through } from "#core/diagnosis/ways.ts";
import { type Arranged, arranged, asDrawn } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { staying } from "#core/rig/staying.ts";
import type { Random } from "#core/units/random.ts";

/** A rig with what is wrong in it, as moves have left both. */
export interface World {
  readonly model: Model;
  readonly state: Arranged;
  readonly there: readonly RigFault[];
}

/** A world that nobody has touched. */
export const worldOf = (model: Model, planted: readonly RigFault[]): World => ({
  model,
  state: asDrawn(model.drawn),
  there: planted,
});

/** What a hand does to a world: what is cured half of the time is drawn. */
export const moved = (world: World, move: Move, random: Random): World => ({
  ...world,
  there: world.there.filter((fault) => random() < staying(fault, move, world.state.rig)),
  state: arranged(world.state, move),
});

/** The faults on the way to a position as it is plugged now. What is not on the list bears the names of its positions. */
export const onTheWay = ({ model, state, there }: World, position: string): readonly RigFault[] => {
  const steps = model.waysOf(state.rig).to(position);
  const beyond = new Set(model.wayTo(position).flatMap(({ faults }) => faults.filter(isUnlisted)));
  return there.filter(
    (fault) => beyond.has(fault) || steps.some(({ faults }) => faults.has(fault)),
  );
};

/** What the way to a position does now, as the number of the model's pool; one that comes and goes stands for several. */
export function wayIn(world: World, position: string): number {
  const { model, state } = world;
  return through(model.pool, model.waysOf(state.rig).to(position), onTheWay(world, position));
}

/** Whether nothing that can be heard is wrong at a position. */
export const works = (world: World, position: string): boolean =>
  !world.model.audible(position)(wayIn(world, position));

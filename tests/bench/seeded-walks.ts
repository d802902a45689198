import type { Rig } from "#core/rig/rig.ts";
import { derive, modelFor } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import { byChecklist, bySwapping, type Listed } from "./alternatives.ts";
import { entropyBound } from "./entropy.ts";
import { anything, assumed, double, offByThree, single } from "./planted.ts";
import { oneOf, rigOf } from "./rigs.ts";
import { type Case, type Outcome, type Walked, walked } from "./walks.ts";

/** What is planted: one fault, two that are both heard, nothing, whatever the odds say, or whatever odds a factor of three off say. */
export const plants = ["single", "double", "nothing", "by odds", "odds off by three"] as const;
export type Plant = (typeof plants)[number];

/** A walk, and the same case by the alternatives where these were asked for. */
export interface Compared extends Walked {
  readonly seed: number;
  readonly planted: number;
  /** Of the faults planted, and the rig and position, for a person to read. */
  readonly what: string;
  readonly checklist?: Listed;
  readonly swapping?: Outcome;
  readonly bound?: Seconds;
}

/** How a batch of walks goes. */
export interface Batch {
  readonly plant: Plant;
  readonly slips: Probability;
  /** The most positions of a rig. */
  readonly positions: number;
  readonly alternatives: boolean;
}

/** So many walks on end have one rig, since its table takes longer than a walk. */
const aRig = 25;

function plantedIn(rig: Rig, plant: Plant, position: string, random: Random) {
  const { model, groups } = modelFor(rig);
  switch (plant) {
    case "single":
      return single(model, groups, position, random);
    case "double":
      return double(model, groups, position, random);
    case "nothing":
      return [];
    case "by odds":
      return anything(model, random, assumed);
    case "odds off by three":
      return anything(model, random, offByThree(random));
  }
}

function compared(rig: Rig, seed: number, { plant, slips, alternatives }: Batch): Compared {
  const random = seeded(seed * 104_729 + 13);
  const derived = derive(add([], { entry: "drawing", rig }, 0));
  if (derived === undefined) throw new Error("the log draws no rig");
  const position = oneOf(derived.model.root.positions, random);
  const planted = plantedIn(rig, plant, position, random);
  const again = (): Case => ({ rig, position, planted, slips, random: seeded(seed * 31 + 5) });
  return {
    ...walked(again()),
    seed,
    planted: planted.length,
    what: `${rig.name}, ${position}: ${planted.map(({ id }) => id).join(" + ")}`,
    ...(alternatives
      ? {
          checklist: byChecklist(again()),
          swapping: bySwapping(again()),
          bound: entropyBound(derived, position),
        }
      : {}),
  };
}

/** The walks of seeds `from` up to `to`, one at a time: a walk depends on its seed alone, whatever went before it. */
export function* walksOf(batch: Batch, from: number, to: number): Generator<Compared> {
  let rig: { readonly number: number; readonly drawn: Rig } | undefined;
  for (let seed = from; seed < to; seed++) {
    const number = Math.floor(seed / aRig);
    if (rig?.number !== number) rig = { number, drawn: rigOf(number + 1, batch.positions) };
    yield compared(rig.drawn, seed, batch);
  }
}

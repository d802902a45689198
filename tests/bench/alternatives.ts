import { catalogue } from "#core/checks/catalogue.ts";
import type { Asked } from "#core/checks/finding.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { mendsAt } from "#core/diagnosis/mends.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { suspectsOf } from "#core/diagnosis/suspects.ts";
import type { Move } from "#core/rig/moves.ts";
import { wornAt } from "#core/rig/rig.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import type { Seconds } from "#core/units/units.ts";
import { askingCost, somebodyElse, toHear } from "./costs.ts";
import { found, personOf } from "./person.ts";
import type { Case, Outcome } from "./walks.ts";
import { moved, type World, works, worldOf } from "./world.ts";

/** What a fixed checklist costs before anything is mended, and until it works. */
export interface Listed {
  readonly verdict: Seconds;
  readonly outcome: Outcome;
}

const worldFor = (one: Case): World => {
  const derived = derive(add([], { entry: "drawing", rig: one.rig }, 0));
  if (derived === undefined) throw new Error("the log draws no rig");
  return worldOf(derived.model, one.planted);
};

/** All five checks by ear, then a look at every place on the way from the far end. */
function everything(model: Model, position: string): readonly Asked[] {
  const way = model.wayTo(position).toReversed();
  return [
    ...catalogue.map(({ name }): Asked => ({ check: name, position })),
    ...way.flatMap(({ looks }) => looks.map(({ place }): Asked => ({ check: "look", place }))),
  ];
}

/** A fixed checklist, gone through to its end; then the suspects are mended, the likeliest first, and each time it is heard. */
export function byChecklist(one: Case): Listed {
  const person = personOf(one.slips, one.random);
  const world = worldFor(one);
  const list = everything(world.model, one.position);
  const log = list.reduce<Log>(
    (so, asked) => add(so, { entry: "finding", finding: found(world, person, asked, 0) }, 0),
    add([], { entry: "drawing", rig: one.rig }, 0),
  );
  const verdict = list.reduce(
    (sum, asked) => sum + askingCost(world.model, asked, one.position),
    0,
  );
  const outcome = mendedInTurn(one, world, repairsBy(log, one.position), verdict);
  return { verdict, outcome: { ...outcome, steps: outcome.steps + list.length } };
}

interface Try {
  readonly move: Move;
  readonly seconds: Seconds;
}

/** For each suspect, the likeliest first, what is likeliest to cure it. */
function repairsBy(log: Log, position: string): readonly Try[] {
  const derived = derive(log);
  if (derived === undefined) return [];
  const { evidence, beliefs, groups } = derived;
  const here = groups.filter(({ branch }) => branch.positions.includes(position));
  const mends = mendsAt(evidence.era, position, evidence.seen);
  const all = suspectsOf(here, beliefs).flatMap(({ group }) => {
    const [fault] = group.faults;
    if (fault === undefined || isUnlisted(fault)) return [];
    const best = mends.toSorted(
      (a, b) => b.cures(fault) - a.cures(fault) || a.seconds - b.seconds,
    )[0];
    return best === undefined ? [] : [best];
  });
  return all.filter(
    ({ move }, at) =>
      all.findIndex((other) => JSON.stringify(other.move) === JSON.stringify(move)) === at,
  );
}

/** Makes one repair after another and hears each time, until it works or somebody else must come. Hearing does not err here. */
function mendedInTurn(
  { position, random }: Case,
  start: World,
  tries: readonly Try[],
  before: Seconds,
): Outcome {
  let world = start;
  let seconds = before;
  let steps = 0;
  for (const { move, seconds: each } of tries) {
    if (works(world, position)) break;
    world = moved(world, move, random);
    seconds += each + toHear;
    steps += 2;
  }
  const well = works(world, position);
  return { seconds: seconds + (well ? 0 : somebodyElse), steps, works: well };
}

/** Hears, then swaps parts from the far end: headphones, output, then every lead and box towards the source, and hears after each. */
export function bySwapping(one: Case): Outcome {
  const world = worldFor(one);
  return mendedInTurn(one, world, swaps(world, one.position), toHear);
}

/** To put in another lead or box where nothing says how long that takes. Common practice, no source. */
const otherwise: Seconds = 60;

function swaps({ model }: World, position: string): readonly Try[] {
  const derived = derive(add([], { entry: "drawing", rig: model.drawn }, 0));
  if (derived === undefined) return [];
  const mends = mendsAt(derived.evidence.era, position, new Set());
  const worn = wornAt(model.drawn, position);
  const steps = model.ways.to(position).toReversed();
  const faults = steps.flatMap((op) => [...op.faults.keys()]);
  const places = [...new Set(faults.map(({ place }) => place))].filter((place) => place !== worn);
  const whole = places.toSorted((a, b) => person(model, a) - person(model, b));
  const quick = mends.filter(({ move }) => move.move === "known good in" || move.move === "moved");
  const setting = (place: string): readonly Try[] =>
    mends.filter(({ move }) => move.move === "set right" && move.place === place);
  const part = (place: string): readonly Try[] => {
    const seconds = mends.find(({ move }) => move.move === "replaced" && move.place === place);
    return [{ move: { move: "replaced", place }, seconds: seconds?.seconds ?? otherwise }];
  };
  return [...quick, ...whole.flatMap((place) => [...part(place), ...setting(place)])];
}

/** People are the last that somebody swaps. */
const person = (model: Model, place: string): number =>
  model.rig.parts.some(
    ({ id }) =>
      id === place && ["listener", "operator", "client"].includes(model.rig.part(id).kind),
  )
    ? 1
    : 0;

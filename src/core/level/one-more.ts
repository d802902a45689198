import type { Called } from "#core/drawing/putting.ts";
import { type Strain, strainsInto } from "#core/patching/strain.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { type Effect, effectOf } from "#core/rig/effect.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import type { Decibels } from "#core/units/units.ts";
import { type Advice, adviceFor, hissOf, levelOf } from "./advice.ts";
import { atEars } from "./at-ears.ts";
import { type Made, rigsWithOneMore, type Way } from "./one-more-rigs.ts";
import { type Feed, feedTo, type Programme } from "./stages.ts";

/** What one more listener changes. */
export interface OneMore {
  readonly way: Way;
  /** The rig as it is then; the newcomer is its last position but for where a copy stands beside its like. */
  readonly rig: Rig;
  readonly newcomer: string;
  /** At the position that it is held against, with no knob touched: louder above nothing. */
  readonly louder: Decibels;
  readonly hissier: Decibels;
  /** The newcomer's knobs as they are best for the level wanted, with the hiss there then. */
  readonly advice: Advice;
  /** What the newcomer gets of the two sides. */
  readonly effect: Effect;
  /** Outputs that drive too little then. */
  readonly strains: readonly Strain[];
}

/**
 * Every way in which one more can listen to what a position gets: from a free output of its box, by a splitter at its plug, from a box with more outputs,
 * and from another amplifier on each free output further up. The best first: nobody's outputs strained, both sides there, nobody made softer, the least hiss.
 */
export function waysForOneMore(
  rig: Rig,
  position: string,
  { programme, wanted, called }: { programme: Programme; wanted: Decibels; called: Called },
): readonly OneMore[] {
  const before = feedTo(build(rig), position);
  if (before === undefined) return [];
  return rigsWithOneMore(rig, before, called)
    .filter(isFirstOfItsKind)
    .flatMap((one) => judged(one, { rig, before, programme, wanted }))
    .sort((a, b) => costOf(a) - costOf(b));
}

/** A lead with a plug for each side is the same drawn from the left socket and from the right one: it is shown once. */
const isFirstOfItsKind = ({ rig }: Made, at: number, all: readonly Made[]): boolean =>
  all.findIndex((one) => drawnAs(one.rig) === drawnAs(rig)) === at;

const drawnAs = ({ parts, plugged }: Rig): string =>
  JSON.stringify([
    parts.map(({ id, kind, settings }) => JSON.stringify([id, kind, settings])).toSorted(),
    plugged
      .map(({ part, plug, into, socket }) => JSON.stringify([part, plug, into, socket]))
      .toSorted(),
  ]);

/** Strain and a lost side weigh more than any level; a fall of the level for who was there as much as hiss. */
const costOf = ({ strains, effect, louder, advice }: OneMore): number =>
  1000 * strains.length +
  (effect === "straight" ? 0 : 300) +
  3 * Math.max(0, -louder) +
  5 * advice.short +
  Math.max(0, hissOf(advice.then));

interface Before {
  readonly rig: Rig;
  readonly before: Feed;
  readonly programme: Programme;
  readonly wanted: Decibels;
}

function judged({ way, rig }: Made, old: Before): readonly OneMore[] {
  const { before, programme, wanted } = old;
  const newcomer = rig.positions.find(({ id }) => old.rig.positions.every((one) => one.id !== id));
  if (newcomer === undefined) return [];
  const built = build(rig);
  const [now, feed] = [feedTo(built, before.position), feedTo(built, newcomer.id)];
  if (now === undefined || feed === undefined) return [];
  const [was, is] = [atEars(before, programme), atEars(now, programme)];
  return [
    {
      way,
      rig,
      newcomer: newcomer.id,
      louder: levelOf(is) - levelOf(was),
      hissier: hissOf(is) - hissOf(was),
      advice: adviceFor(feed, programme, wanted),
      effect: effectOf(relativeGains(built, newcomer.id, [])),
      strains: strainsOn(built, [now, feed]),
    },
  ];
}

/** Along both ways, each told once. */
function strainsOn(rig: BuiltRig, feeds: readonly Feed[]): readonly Strain[] {
  const parts = feeds.flatMap(({ stages, worn }) => [
    ...stages.slice(1).map(({ part }) => part),
    worn.part,
  ]);
  const all = [...new Set(parts)].flatMap((part) => strainsInto(rig, part));
  return all.filter(
    ({ part, socket }, at) =>
      all.findIndex((one) => one.part === part && one.socket === socket) === at,
  );
}

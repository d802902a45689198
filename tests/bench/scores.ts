import { gapByChance, reliability, type Stated, weightedGap } from "./calibration.ts";
import type { Compared } from "./seeded-walks.ts";

const mean = <Item>(items: readonly Item[], value: (item: Item) => number): number =>
  items.reduce((sum, one) => sum + value(one), 0) / Math.max(1, items.length);

const share = <Item>(items: readonly Item[], holds: (item: Item) => boolean): number =>
  mean(items, (one) => Number(holds(one)));

/** What some walks come to. Shares from 0 to 1, seconds and steps as means. */
export interface Scores {
  readonly walks: number;
  /** Some planted fault is named first, or was mended by the way; and all of them are shown, or mended. */
  readonly first: number;
  readonly shown: number;
  /** Some planted fault is named first, was mended by the way, or is mended by the repair that the verdict proposes. */
  readonly right: number;
  readonly healthy: number;
  readonly lost: number;
  readonly seconds: number;
  readonly steps: number;
  readonly works: number;
  readonly toWorking: number;
  readonly stepsToWorking: number;
}

/** Sums up some walks. */
export const scoresOf = (walks: readonly Compared[]): Scores => ({
  walks: walks.length,
  first: share(walks, ({ verdict }) => verdict.first > 0),
  shown: share(walks, ({ verdict, planted }) => verdict.shown === planted),
  right: share(walks, ({ verdict }) => verdict.right),
  healthy: share(walks, ({ verdict }) => verdict.end === "healthy"),
  lost: share(walks, ({ verdict }) => verdict.end === "lost"),
  seconds: mean(walks, ({ verdict }) => verdict.seconds),
  steps: mean(walks, ({ verdict }) => verdict.steps),
  works: share(walks, ({ outcome }) => outcome.works),
  toWorking: mean(walks, ({ outcome }) => outcome.seconds),
  stepsToWorking: mean(walks, ({ outcome }) => outcome.steps),
});

/** What the alternatives come to, on the same cases. */
export const alternativesOf = (walks: readonly Compared[]) => ({
  listVerdict: mean(walks, ({ checklist }) => checklist?.verdict ?? 0),
  listToWorking: mean(walks, ({ checklist }) => checklist?.outcome.seconds ?? 0),
  listWorks: share(walks, ({ checklist }) => checklist?.outcome.works ?? false),
  swapToWorking: mean(walks, ({ swapping }) => swapping?.seconds ?? 0),
  swapWorks: share(walks, ({ swapping }) => swapping?.works ?? false),
  bound: mean(walks, ({ bound }) => bound ?? 0),
});

/** What was stated where somebody was named. */
const statedBy = (walks: readonly Compared[]): readonly Stated[] =>
  walks.flatMap(({ named }) => named ?? []);

/** The reliability table of some walks, and its weighted mean gap. */
export function calibrationOf(walks: readonly Compared[]) {
  const table = reliability(statedBy(walks));
  return { table, gap: weightedGap(table), byChance: gapByChance(table) };
}

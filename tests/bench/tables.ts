import { type Bin, gapByChance } from "./calibration.ts";
import type { Scores } from "./scores.ts";

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;

/** A table in Markdown. */
export const markdown = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map((_, at) => (at === 0 ? "---" : "---:")), ...rows]
    .map((row) => `| ${row.join(" | ")} |`)
    .join("\n");

/** Walks of one kind a row. */
export const scoresTable = (rows: readonly (readonly [string, Scores])[]): string =>
  markdown(
    [
      "planted",
      "walks",
      "one first",
      "or its repair right",
      "all shown",
      "ends healthy",
      "lost",
      "s to verdict",
      "steps",
      "works",
      "s to working",
      "steps ",
    ],
    rows.map(([name, one]) => [
      name,
      `${one.walks}`,
      percent(one.first),
      percent(one.right),
      percent(one.shown),
      percent(one.healthy),
      percent(one.lost),
      one.seconds.toFixed(0),
      one.steps.toFixed(1),
      percent(one.works),
      one.toWorking.toFixed(0),
      one.stepsToWorking.toFixed(1),
    ]),
  );

/** Stated against true, ten bins. */
export const reliabilityTable = (table: readonly Bin[], gap: number): string =>
  markdown(
    ["stated from", "walks", "stated", "true"],
    [
      ...table.map(({ from, count, stated, true: right }) => [
        percent(from),
        `${count}`,
        percent(stated),
        percent(right),
      ]),
      ["weighted mean gap", "", "", percent(gap)],
      ["of that by chance alone", "", "", percent(gapByChance(table))],
    ],
  );

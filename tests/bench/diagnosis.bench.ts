import { bench, describe } from "vitest";
import type { EarCheckName } from "#core/checks/check.ts";
import type { Happening } from "#core/checks/finding.ts";
import { standingAt } from "#core/diagnosis/advice.ts";
import { beliefsOf } from "#core/diagnosis/beliefs.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import { modelOf } from "#core/diagnosis/model.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";

const rig = fromHeadphoneSocket("eight at a table", [
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
]);
const { model, groups } = modelFor(rig);

const heard = (position: string, check: EarCheckName, ...answers: string[]): Happening => ({
  kind: "finding",
  finding: { asked: { check, position }, results: answers.map((one) => [one]) },
});

/** Seven positions healthy, and the eighth begun: its left is dead. */
const log: readonly Happening[] = [
  ...[1, 2, 3, 4, 5, 6, 7].flatMap((at) => [
    heard(`position ${at}`, "left", "left ear"),
    heard(`position ${at}`, "right", "right ear"),
    heard(`position ${at}`, "pair", "middle", "all round"),
  ]),
  heard("position 8", "left", "nothing"),
];

/** The hardest case: no two positions gave the same answers. */
const places = ["left ear", "middle", "all round", "off to the left", "nothing", "right ear"];
const mixed: readonly Happening[] = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((at) => {
  const place = (by: number) => places[(at + by) % places.length] ?? "nothing";
  return [
    heard(`position ${at + 1}`, "left", place(0)),
    heard(`position ${at + 1}`, "right", place(at < 6 ? 1 : 3)),
    heard(`position ${at + 1}`, "pair", place(2), place(4)),
  ];
});

/** After a part was replaced: findings from before it speak of the rig as it was. */
const replaced: readonly Happening[] = [
  ...log,
  { kind: "move", move: { move: "replaced", place: "headphones 8" } },
  heard("position 8", "left", "left ear"),
];

describe("eight positions", () => {
  bench("beliefs from the whole log and the next check (bound: 10 ms)", () => {
    const evidence = evidenceOf(model, log);
    standingAt(model, groups, evidence, beliefsOf(model, evidence), "position 8");
  });
  bench("the same where no two positions answered alike", () => {
    const evidence = evidenceOf(model, mixed);
    standingAt(model, groups, evidence, beliefsOf(model, evidence), "position 8");
  });
  bench("the same after a part was replaced", () => {
    const evidence = evidenceOf(model, replaced);
    standingAt(model, groups, evidence, beliefsOf(model, evidence), "position 8");
  });
  bench("the named alternative: the rig's table made anew for every answer", () => {
    modelOf(rig);
  });
});

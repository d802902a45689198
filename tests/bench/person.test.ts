import { expect, test } from "vitest";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import { found, personOf } from "./person.ts";
import { moved, works, worldOf } from "./world.ts";

const { model } = modelFor(straightIn);
const faults = model.branches.flatMap((branch) => branch.faults);
const position = "position 1";
const left = { check: "left", position } as const;

function fault(name: string, comesAndGoes = false): RigFault {
  const one = faults.find(
    (each) => each.name === name && (each.comesAndGoes ?? false) === comesAndGoes,
  );
  if (one === undefined) throw new Error(`no ${name}`);
  return one;
}

function said(planted: readonly RigFault[], slips: number, times: number): readonly string[] {
  const person = personOf(slips, seeded(4));
  return Array.from({ length: times }, () => {
    const finding = found(worldOf(model, planted), person, left, 0);
    return "results" in finding ? (finding.results[0]?.[0] ?? "") : "";
  });
}

const share = (answers: readonly string[], one: string): number =>
  answers.filter((answer) => answer === one).length / answers.length;

test("a healthy chain is heard as it is, and a finger slips as often as told", () => {
  expect(share(said([], 0, 50), "left ear")).toBe(1);
  const answers = said([], 0.5, 4000);
  const count = new Set(answers).size;
  expect(share(answers, "left ear")).toBeCloseTo(0.5 + 0.5 / count, 1);
});

test("somebody who mirrors says the other side for good", () => {
  expect(share(said([fault("mirrors left and right")], 0, 50), "right ear")).toBe(1);
});

test("what comes and goes is drawn at each playing", () => {
  const loose = faults.find(
    (one) =>
      one.comesAndGoes &&
      model.pool.showings(model.under(position, [one])).length > 1 &&
      one.name === "tip open",
  );
  expect(loose).toBeDefined();
  const answers = said(loose === undefined ? [] : [loose], 0, 2000);
  expect(share(answers, "left ear")).toBeCloseTo(0.5, 1);
});

test("a good set instead of a broken one works, and the broken one put back does not", () => {
  const broken = worldOf(model, [fault("tip open")]);
  const random = seeded(1);
  expect(works(broken, position)).toBe(false);
  const lent = moved(broken, { move: "known good in", part: "headphones 1" }, random);
  expect(works(lent, position)).toBe(true);
  expect(works(moved(lent, { move: "put back", part: "headphones 1" }, random), position)).toBe(
    false,
  );
});

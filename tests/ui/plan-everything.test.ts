import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { choicesOf, fitsPatch } from "#core/patching/patches.ts";
import { outputsOf } from "#core/patching/sockets-of.ts";
import { english } from "#core/words/english.ts";
import { planShape } from "#ui/parts/plan-shape.ts";
import { countsOf, sceneOf } from "#ui/parts/scene.ts";
import { firstPlan, type Plan, withFrom, withInto } from "#ui/screens/plan.ts";
import { foresee, outcomesOf } from "#ui/screens/plan-foresee.ts";
import { leaveBy } from "#ui/screens/plan-moves.ts";

const kinds = Object.keys(catalogue) as readonly PartKind[];
const has = (kind: PartKind, families: readonly string[]) =>
  families.includes(catalogue[kind].family);
const senders = kinds.filter(
  (kind) => has(kind, ["source", "amplifier"]) && outputsOf({ id: kind, kind }).length > 0,
);
const takers = kinds.filter((kind) => has(kind, ["amplifier", "headphones"]));

/** Every box, every output of it, into everything. */
const plans = senders.flatMap((from) =>
  takers.flatMap((into): readonly Plan[] => {
    const plan = withInto(withFrom(firstPlan(), from), into);
    return outputsOf(plan.from).map(({ name }) => leaveBy(plan, name));
  }),
);

test("there is much to choose from", () => {
  expect(plans.length).toBeGreaterThan(300);
});

test("whatever is pointed at, every plug finds its socket, and what is joined is foreseen", () => {
  for (const plan of plans) {
    const name = `${plan.from.kind} ${plan.socket} into ${plan.into.kind}`;
    expect(fitsPatch(plan, plan.patch), name).toBe(true);
    if (plan.patch.plugged.length === 0) continue;
    expect(foresee(plan)?.prediction.gains.every(Number.isFinite), name).toBe(true);
  }
});

test("nothing is left apart that a lead or an adapter joins", () => {
  for (const plan of plans.filter(({ patch }) => patch.plugged.length === 0)) {
    const name = `${plan.from.kind} ${plan.socket} into ${plan.into.kind}`;
    expect(choicesOf(plan, plan.socket, "leads"), name).toEqual([]);
    expect(choicesOf(plan, plan.socket, "adapters"), name).toEqual([]);
  }
});

describe.each([true, false])("wide: %s", (wide) => {
  test("everything is drawn inside the picture, and rows of sockets are a finger apart", () => {
    for (const plan of plans) {
      const foreseen = foresee(plan);
      const scene = sceneOf(plan, foreseen?.rig, foreseen?.prediction);
      const shape = planShape(wide, countsOf(scene));
      const points = [
        ...shape.from.sockets,
        ...(shape.into?.sockets ?? []),
        ...shape.cups,
        shape.leadName,
        shape.wornName,
      ];
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(shape.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(shape.height);
      }
      const heights = shape.from.sockets.map(([, y]) => y);
      for (const [at, y] of heights.slice(1).entries())
        expect(y - (heights[at] ?? 0)).toBeGreaterThanOrEqual(45);
      expect(shape.middle.length).toBeGreaterThan(60);
    }
  });
});

test("every parameter of every kind has words, and every output stage an outcome", () => {
  const { parameters } = english.patching;
  for (const kind of kinds)
    for (const name of Object.keys(catalogue[kind].parameters))
      expect(parameters[name], `${kind}: ${name}`).toBeTypeOf("string");
  expect(outcomesOf(leaveBy(firstPlan(), "send"))).toHaveLength(7);
});

test("no two kinds have the same name", () => {
  const names = kinds.map((kind) => english.patching.kinds[kind].name);
  expect(new Set(names).size).toBe(names.length);
});

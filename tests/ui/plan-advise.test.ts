import { describe, expect, test } from "vitest";
import type { Want } from "#core/patching/wants.ts";
import { gives } from "#core/patching/wants.ts";
import {
  firstPlan,
  type Plan,
  undone,
  wanting,
  withFrom,
  withPatch,
  withSetting,
  withStage,
} from "#ui/screens/plan.ts";
import { type Advised, advising } from "#ui/screens/plan-advise.ts";
import { foresee, isCertain, outcomesOf, stageMatters } from "#ui/screens/plan-foresee.ts";
import { leaveBy } from "#ui/screens/plan-moves.ts";

/** The advice, with no rest between one search and the next. */
function adviceFor(plan: Plan): Advised {
  const search = advising(plan);
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}

const send = (want: Want) => wanting(leaveBy(firstPlan(), "send"), want);
const main = wanting(leaveBy(firstPlan(), "main left"), "stereo");

const kindsIn = (advised: Advised) =>
  advised.advice === "take" ? advised.best.patch.wires.map(({ kind }) => kind) : advised.advice;

describe("advice", () => {
  test("a balanced send in both ears: tip to tip and ring, and using it gives what was wanted", () => {
    const plan = withStage(send("mono in both ears"), "actively balanced");
    const advised = adviceFor(plan);
    expect(kindsIn(advised)).toEqual([expect.stringMatching(/^one-to-both lead/)]);
    if (advised.advice !== "take") throw new Error("nothing to take");
    const after = foresee(withPatch(plan, advised.best.patch));
    expect(after?.prediction.effect).toBe("mono");
  });

  test("where no output that was pointed at gives it, another one of the box does", () => {
    const advised = adviceFor(withStage(send("stereo"), "actively balanced"));
    if (advised.advice !== "take") throw new Error("nothing to take");
    expect(advised.best.patch.plugged).toContainEqual(
      expect.objectContaining({ into: "mixer", socket: "phones" }),
    );
  });

  test("a main pair asks for the output stage; who does not know is told what serves most, and what else to try", () => {
    expect(adviceFor(main)).toEqual({ advice: "ask" });
    const advised = adviceFor(withStage(main, undefined));
    if (advised.advice !== "unsure") throw new Error("it should be unsure");
    const { first, chance, otherwise } = advised.unsure;
    expect(first.patch.wires.map(({ kind }) => kind)).toEqual([
      "insert Y with TRS plugs, rings unused",
    ]);
    expect(chance).toBeGreaterThan(0.7);
    expect(otherwise).toBeDefined();
  });

  test("what nothing gives is said", () => {
    const phone = withFrom(firstPlan(), "player");
    expect(adviceFor(wanting(phone, "an own mix"))).toEqual({ advice: "none" });
  });

  test("every way that is shown gives what is wanted and strains nothing", () => {
    for (const want of ["stereo", "mono in both ears", "left ear only"] as const) {
      const advised = adviceFor(withStage(send(want), "actively balanced"));
      if (advised.advice !== "take") throw new Error(`nothing for ${want}`);
      for (const { prediction } of [advised.best, ...advised.others]) {
        expect(gives(prediction, want)).toBe(true);
        expect(prediction.strains).toEqual([]);
      }
    }
  });

  test("there is a rest between one search and the next", () => {
    const rests = [...advising(main)].length;
    expect(rests).toBeGreaterThanOrEqual(8);
  });
});

describe("certainty", () => {
  test("a stereo socket does not hang on the output stage, a send does", () => {
    expect(stageMatters(outcomesOf(firstPlan()))).toBe(false);
    expect(stageMatters(outcomesOf(send("stereo")))).toBe(true);
  });

  test("what strains one stage that it may have is not certain", () => {
    const plan = firstPlan();
    expect(isCertain("stereo", foresee(plan), outcomesOf(plan))).toBe(true);
    expect(isCertain("mono in both ears", foresee(plan), outcomesOf(plan))).toBe(false);
  });
});

test("a change is taken back, and what was wanted stays", () => {
  const plan = firstPlan();
  const changed = wanting(withSetting(plan, "mixer", "output ohms", 120), "mono in both ears");
  expect(changed.from.settings).toEqual({ "output ohms": 120 });
  expect(undone(changed)).toMatchObject({ from: plan.from, want: "mono in both ears" });
  expect(undone(plan)).toBe(plan);
});

import { expect, test } from "vitest";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { lookAnswers } from "#ui/parts/look-answers.ts";

test.for(builtInRigs)("every answer of every look has words of its own: $name", (rig) => {
  const { model } = modelFor(rig);
  const faults = model.branches.flatMap((branch) => branch.faults);
  for (const look of model.looks) {
    const labels = lookAnswers(model.rig, look, faults).map(({ label }) => label);
    expect(new Set(labels).size, `${look.place}: ${labels.join("; ")}`).toBe(labels.length);
  }
});

import { expect, test } from "vitest";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { lookAnswers } from "#ui/parts/look-answers.ts";

test.for(builtInRigs)("every answer of every look has words of its own: $name", (rig) => {
  const { model } = modelFor(rig);
  const faults = model.branches.flatMap((branch) => branch.faults);
  for (const language of [english, german])
    for (const look of model.looks) {
      const labels = lookAnswers(language, model.rig, look, faults).map(({ label }) => label);
      expect(new Set(labels).size, `${look.place}: ${labels.join("; ")}`).toBe(labels.length);
    }
});

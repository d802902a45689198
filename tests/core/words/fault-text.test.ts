import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";
import { faultText, mendText } from "#core/words/fault-text.ts";
import { german } from "#core/words/german.ts";

const languages = { english, german };

test.for(
  builtInRigs.flatMap((rig) => (["english", "german"] as const).map((name) => ({ rig, name }))),
)("no two groups that checks tell apart are said alike: $rig.name, $name", ({ rig, name }) => {
  const { groups, model } = modelFor(rig);
  const said = new Map<string, string>();
  for (const [at, { faults, inaudible }] of groups.entries())
    for (const fault of faults.filter((one) => !inaudible && !isUnlisted(one))) {
      const text = faultText(languages[name], model.rig, fault);
      const group = String(at);
      expect(said.get(text) ?? group, text).toBe(group);
      said.set(text, group);
    }
});

test("what to do names the same place as what is wrong", () => {
  const [rig] = builtInRigs;
  if (rig === undefined) throw new Error("there is no built-in rig");
  const { model } = modelFor(rig);
  const fault = model.root.faults.find(({ at }) => at === "near in send");
  if (fault === undefined) throw new Error("the lead cannot stand in the send");
  expect(faultText(english, model.rig, fault)).toContain("socket marked send at the mixer");
  expect(mendText(english, model.rig, fault)).toContain("socket marked send at the mixer");
  expect(faultText(german, model.rig, fault)).toContain("in der Buchse »send« an »Mischpult«");
  expect(mendText(german, model.rig, fault)).toContain("in der Buchse »send« an »Mischpult«");
});

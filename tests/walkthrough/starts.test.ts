import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { starts } from "#core/rig/starts.ts";
import { modelFor } from "#core/session/derive.ts";
import { seeded } from "#core/units/random.ts";
import { everyOther } from "#tests/support/long.ts";
import { starts as words } from "#ui/words/english/starts.ts";
import { score, table } from "./score.ts";
import { walk } from "./walk.ts";

/** Of every start some faults, spread over all there are; all of them in the long form. */
test.each(starts.filter(({ key }) => key !== "draw your own"))(
  "faults planted in the $key are found",
  { timeout: 300_000 },
  ({ make }) => {
    const rig = make(words);
    const position = rig.positions[0]?.id ?? "";
    const { groups, model } = modelFor(rig);
    const way = new Set(model.wayTo(position).flatMap(({ faults }) => faults));
    const planted = groups
      .filter(({ inaudible }) => !inaudible)
      .flatMap((group) =>
        group.faults
          .filter((fault) => way.has(fault) && !isUnlisted(fault) && !fault.comesAndGoes)
          // A knob of one feed of a source is heard by nobody at its other one.
          .filter((fault) => model.under(position, [fault]) !== model.healthy(position))
          .map((fault) => ({ fault, group })),
      );
    const walked = everyOther(planted, Math.ceil(planted.length / 4)).map((one, index) => ({
      ...one,
      walked: walk({ rig, planted: [one.fault], slips: 0, random: seeded(index) }, position),
    }));
    console.log(table(walked));
    const { shown, count } = score(walked);
    expect(count).toBeGreaterThanOrEqual(3);
    expect(shown).toBe(count);
  },
);

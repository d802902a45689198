import { describe, expect, test } from "vitest";
import { complaint } from "#core/checks/complaint.ts";
import { type Complaint, complaints, mirroredComplaint } from "#core/checks/complaints.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import { type BuiltRig, build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { newSetUps, setUps } from "#tests/reference/field-case-rigs.ts";

const chance = (answers: Float64Array, of: Complaint): number =>
  answers[complaints.indexOf(of)] ?? 0;

describe.each([
  ["English", english, ["left", "right"]],
  ["German", german, ["links", "rechts"]],
] as const)(
  "people's own words in %s",
  (_, { complaints: { means, eitherEar } }, [left, right]) => {
    const words = Object.entries(means);

    test("one of them says that one ear is dead and not which", () => {
      expect(means[eitherEar]).toEqual(["only the left ear works", "only the right ear works"]);
    });

    test("each may be one of the complaints on the list, and all of these are in some word", () => {
      for (const [word, some] of words) {
        expect(some.length, word).toBeGreaterThan(0);
        expect(complaints, word).toEqual(expect.arrayContaining([...some]));
        expect(new Set(some).size, word).toBe(some.length);
      }
      expect(new Set(words.flatMap(([, some]) => some))).toEqual(new Set(complaints));
    });

    test("a word that names a side has its mirror", () => {
      for (const [word, some] of words.filter(([each]) => each.includes(left))) {
        const other = means[word.replace(left, right)] ?? [];
        expect(new Set(other), word).toEqual(new Set(some.map(mirroredComplaint)));
      }
    });

    /** The least and the most likely of all words, for one fault at the first position of a rig. */
    const spread = (rig: BuiltRig, fault: RigFault) => {
      const position = rig.positions[0]?.id ?? "";
      const answers = complaint.predict(
        behaviourAt(rig, position, [fault]),
        behaviourAt(rig, position, []),
      );
      const chances = words.map(([, some]) =>
        some.reduce((all, one) => all + chance(answers, one), 0),
      );
      return { least: Math.min(...chances), most: Math.max(...chances) };
    };

    test("none rules out a fault of a rig, nor proves one", () => {
      for (const rig of [build(straightIn), build(fromHeadphoneSocket("one seat", ["one"]))])
        for (const fault of rigFaults(rig)) {
          expect(spread(rig, fault).least, fault.id).toBeGreaterThan(0.001);
          expect(spread(rig, fault).most, fault.id).toBeLessThan(0.99);
        }
    });

    test.each(Object.entries({ ...setUps, ...newSetUps }))(
      "whatever was said in %s, its cause stays possible",
      (_, [plan, cause]) => {
        const rig = build(plan);
        const causes = rigFaults(rig).filter((fault) => cause(fault));
        expect(causes.length).toBeGreaterThan(0);
        for (const fault of causes)
          expect(spread(rig, fault).least, fault.id).toBeGreaterThan(0.001);
      },
    );
  },
);

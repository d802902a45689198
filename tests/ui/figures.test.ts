import { expect, test } from "vitest";
import { words as english } from "#ui/words/english.ts";
import { words as german } from "#ui/words/german.ts";

test("German numbers have a comma, and names their words", () => {
  expect(german.figures.decibels(-6.14)).toBe("−6,1 dB");
  expect(german.figures.lasting(1.25)).toBe("1,3 s");
  expect(english.figures.decibels(-0.04)).toBe("0.0 dB");
  expect(english.figures.signedDecibels(-0.04)).toBe("+0.0 dB");
  const at = Date.UTC(2026, 10, 21, 20, 5);
  expect(german.figures.date(at)).toMatch(/^Samstag, 21\. November 2026$/);
  expect(english.figures.date(at)).toMatch(/^Saturday,? 21 November 2026$/);
  expect(english.figures.time(at)).toMatch(/^\d\d:05$/);
  expect(german.marks.socket("output 12")).toBe("Ausgang 12");
  expect(german.marks.socket("main left")).toBe("main left");
  expect(german.marks.plug("near left")).toBe("vorn links");
});

test("a jack's size stands behind its poles, and in German the ends of a lead have their names", () => {
  const socket = { kind: "four-pole, common on sleeve", size: "3.5 mm" } as const;
  const refusal = { refused: "does not fit", part: "Q", plug: { kind: "XLR" }, socket } as const;
  expect(english.rig.refused(refusal)).toContain("(four-pole 3.5 mm, common on sleeve)");
  expect(german.rig.refused(refusal)).toContain("(vierpolig 3,5 mm, Masse auf dem Schaft)");
  expect(german.rig.at("output 2", "Q")).toBe("Ausgang 2 von Q");
  expect(german.rig.before("near", "Q", "")).toBe("vor Q, am Stecker »vorn«");
  expect(german.rig.before(undefined, "Q", "Ausgang 2 von V")).toBe("vor Q, in Ausgang 2 von V");
  expect(german.rig.before(undefined, "Q", "")).toBe("vor Q");
  expect(english.rig.before(undefined, "Q", "out of V")).toBe(
    "in the way of Q, before its plug in out of V",
  );
  expect(german.rig.removeWith(2)).toBe("entfernen, samt 2 Plätzen daran");
});

import { expect, test } from "vitest";
import type { Prediction } from "#core/patching/prediction.ts";
import { firstPlan, withSetting } from "#ui/screens/plan.ts";
import { foresee } from "#ui/screens/plan-foresee.ts";
import { humWords, levelWords, panWords, patchName, strainWords } from "#ui/screens/plan-words.ts";
import { words } from "#ui/words/english.ts";

const seen = foresee(firstPlan());
if (seen === undefined) throw new Error("the first plan is not plugged through");
const { prediction } = seen;
const at = (left: number, right: number): Prediction => ({ ...prediction, level: [left, right] });

test.for([
  [-0.1, -0.1, "As loud as the output gives it."],
  [5.9, 5.9, "5.9 dB louder than the output gives it on one leg, with as much less headroom."],
  [-6.1, -6.2, "6.1 dB quieter than the output gives it."],
  [0, -71, "As loud as the output gives it."],
  [0, -6, "Left ear +0.0 dB, right ear −6.0 dB."],
  [-60, -60, "Nothing arrives."],
] as const)("a level of %d and %d dB: %s", ([left, right, said]) => {
  expect(levelWords(words, at(left, right))).toBe(said);
});

test("what pan does, with the places that a source is heard in", () => {
  const panned = (left: Prediction["panning"]["left"], middle = left, right = left) =>
    panWords(words, { ...prediction, panning: { left, middle, right, wide: left } });
  expect(panWords(words, prediction)).toMatch(/^Pan works/);
  expect(panned("all round")).toBe("Pan does nothing: all is heard all round, in no place.");
  expect(panned("left ear", "left ear", "nothing")).toBe(
    "Panned left: in the left ear. Middle: in the left ear. Right: not heard at all.",
  );
});

test("why it may hum: two mains earths, or a return that is not joined through", () => {
  const plan = firstPlan();
  expect(humWords(words, prediction, plan)).toBe("No hum to expect.");
  const earthed = withSetting(plan, "headphone amplifier", "supply", "mains-earthed");
  const risk = foresee(earthed)?.prediction;
  expect(risk && humWords(words, risk, earthed)).toContain("Both hang on mains earth");
  expect(humWords(words, { ...prediction, hum: "loud" }, plan)).toContain("not joined through");
});

test("an output that is shorted, by its ohms", () => {
  const strains = [{ part: "mixer", socket: "phones", ohms: 0.12 }];
  expect(strainWords(words, { ...prediction, strains })).toBe(
    "Hard on phones: it drives 0.1 Ω, which is a short to it.",
  );
});

test("what is between, by its names", () => {
  expect(patchName(words, firstPlan().patch)).toBe("stereo jack lead");
  expect(patchName(words, { wires: [], plugged: [] })).toBe("nothing yet");
});

import { heards, mirrored } from "#core/listening/heard.ts";
import { percept } from "#core/listening/percept.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import { ears } from "#core/rig/ear-matrix.ts";
import { add, type Complex, scale, size, zero } from "#core/units/complex.ts";
import type { Question } from "./check.ts";

/** What the programme is for one sound: the amplitude on its left and on its right. */
export type Programme = readonly [left: number, right: number];

/** Where was it? The question about one sound, for what stands on the programme's two sides. */
export const whereWas = (name: string, programme: Programme): Question => ({
  name,
  answers: heards,
  predict: (behaviour, healthy) => {
    const [left, right] = atEars(behaviour, programme);
    const reference = Math.max(...referenceFor(healthy, programme));
    const said = percept(left, right, reference, behaviour.late * behaviour.worn);
    return behaviour.mirrors ? turnRound(said) : said;
  },
});

/** The signals at the ears, for one on the programme. */
export function atEars(
  behaviour: Behaviour,
  [left, right]: Programme,
): readonly [Complex, Complex] {
  const [leftEar = zero, rightEar = zero] = ears(behaviour).map(
    ([fromLeft = zero, fromRight = zero]) => add(scale(fromLeft, left), scale(fromRight, right)),
  );
  return [leftEar, rightEar];
}

/**
 * How loud a sound would be in a healthy chain. Where it would not be heard at all, as the opposite burst in a mono feed, a
 * person compares with the sounds they did hear.
 */
export const referenceFor = (healthy: Behaviour, programme: Programme): readonly number[] =>
  [programme, [1, 0] as const, [0, 1] as const].flatMap((one) => atEars(healthy, one).map(size));

const turned = heards.map((heard) => heards.indexOf(mirrored(heard)));

const turnRound = (said: Float64Array): Float64Array =>
  said.map((_, index) => said[turned[index] ?? index] ?? 0);

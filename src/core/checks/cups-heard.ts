import { type Heard, heards } from "#core/listening/heard.ts";
import { percept } from "#core/listening/percept.ts";
import { real } from "#core/units/complex.ts";
import type { Answered } from "./finding.ts";

/** What each cup gives of the left and of the right programme: amplitudes with a sign, of any scale. */
export type CupGains = readonly [
  left: readonly [left: number, right: number],
  right: readonly [left: number, right: number],
];

/** What a listener whose ears are two cups' microphones would have answered: to the left knock, the right ones, and the pair of bursts. */
export function answeredByCups(position: string, [left, right]: CupGains): readonly Answered[] {
  const strongest = Math.max(...[...left, ...right].map(Math.abs));
  const heard = (ofLeft: number, ofRight: number): readonly Heard[] => [
    likeliest(
      left[0] * ofLeft + left[1] * ofRight,
      right[0] * ofLeft + right[1] * ofRight,
      strongest,
    ),
  ];
  const at = (check: "left" | "right" | "pair", ...results: (readonly Heard[])[]): Answered => ({
    asked: { check, position },
    results,
  });
  return [at("left", heard(1, 0)), at("right", heard(0, 1)), at("pair", heard(1, 1), heard(1, -1))];
}

/** Of several possibilities of what the cups give: the answers in which all of them agree. The rest is still to be asked of ears. */
export function surelyAnswered(
  position: string,
  possible: readonly CupGains[],
): readonly Answered[] {
  const [first = [], ...more] = possible.map((gains) => answeredByCups(position, gains));
  return first.filter((answered, at) =>
    more.every((other) => `${other[at]?.results}` === `${answered.results}`),
  );
}

function likeliest(left: number, right: number, strongest: number): Heard {
  if (strongest === 0) return "nothing";
  const chances = percept(real(left), real(right), strongest);
  return heards[chances.indexOf(Math.max(...chances))] ?? "nothing";
}

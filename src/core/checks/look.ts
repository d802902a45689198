import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability, Seconds } from "#core/units/units.ts";

/** A look at one place: its switches, its plugs, how it is worn. */
export interface Look {
  readonly place: string;
  /** 'As it should be' first, then every sight there may be. */
  readonly answers: readonly string[];
  readonly seconds: Seconds;
}

export const asItShouldBe = "as it should be";

/** What an eye makes of a fault: how far a plug is out, nobody sees. */
export const sightOf = ({ part, at, name }: RigFault): string =>
  `${part} / ${at} / ${name.startsWith("not home") ? "not home" : name}`;

/** How often a look finds what is there. Common practice, no source. */
const found: Probability = 0.95;

/** One look for each place among some faults that has something to see. */
export function looksAt(rig: BuiltRig, faults: readonly RigFault[]): readonly Look[] {
  const seen = faults.filter((fault) => fault.seen);
  return [...new Set(seen.map(({ place }) => place))].map((place) => {
    const there = seen.filter((fault) => fault.place === place);
    const [first] = there;
    if (first === undefined) throw new Error(`nothing is at ${place}`);
    return {
      place,
      answers: [asItShouldBe, ...new Set(there.map(sightOf))],
      seconds: rig.part(first.part).look,
    };
  });
}

/** The sights some faults would give to a look. */
export const sightsOf = ({ answers }: Look, faults: readonly RigFault[]): readonly string[] => [
  ...new Set(faults.map(sightOf).filter((sight) => answers.includes(sight))),
];

/** One probability for each answer of a look, from the sights that are there. */
export function predictLook({ answers }: Look, sights: readonly string[]): Float64Array {
  const missed = sights.length === 0 ? 1 : 1 - found;
  return Float64Array.from(answers, (answer) => {
    if (answer === asItShouldBe) return missed;
    return sights.includes(answer) ? found / sights.length : 0;
  });
}

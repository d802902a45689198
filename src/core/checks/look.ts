import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Probability, Seconds } from "#core/units/units.ts";

/** A look at one place: its switches, its plugs, how it is worn. */
export interface Look {
  readonly place: string;
  /** The faults it would show, by id, and 'as it should be' first. */
  readonly answers: readonly string[];
  readonly seconds: Seconds;
}

export const asItShouldBe = "as it should be";

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
      answers: [asItShouldBe, ...there.map(({ id }) => id)],
      seconds: rig.part(first.part).look,
    };
  });
}

/** One probability for each answer of a look, from the faults that are there. */
export function predictLook({ answers }: Look, there: readonly string[]): Float64Array {
  const shown = there.filter((id) => answers.includes(id));
  const missed = shown.length === 0 ? 1 : 1 - found;
  return Float64Array.from(answers, (answer) => {
    if (answer === asItShouldBe) return missed;
    return shown.includes(answer) ? found / shown.length : 0;
  });
}

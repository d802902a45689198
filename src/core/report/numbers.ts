import type { Chosen } from "#core/diagnosis/choice.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { type Option, optionsAt } from "#core/diagnosis/options.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Decibels, Probability } from "#core/units/units.ts";

/** The numbers behind a position: what is believed, what its ears get, and what each check would tell. */
export interface Numbers {
  readonly trouble: Probability;
  /** How likely each is to be there, the likeliest first, with 'something not on the list' wherever it stands. */
  readonly suspects: readonly Suspect[];
  /** How many were left out, and how likely the likeliest of them is. */
  readonly others: { readonly count: number; readonly most: Probability };
  /** The ear matrix with nothing wrong, and with the leading suspect alone. */
  readonly sound: Ears;
  readonly suspected: { readonly fault: RigFault; readonly ears: Ears } | undefined;
  /** What each check on offer is expected to tell, the most for its seconds first. */
  readonly options: readonly Option[];
  /** What was weighed where something seems wrong. */
  readonly choice: Chosen | undefined;
}

/** One way from a side of the programme to an ear, against the programme's open voltage at 1 kHz. */
interface EarGain {
  readonly level: Decibels;
  /** From −180 to 180. */
  readonly degrees: number;
}

/** Left ear from left, left ear from right, right ear from left, right ear from right. */
export type Ears = readonly [EarGain, EarGain, EarGain, EarGain];

/** So many suspects are named, and none that is less likely, but for what is not on the list. */
const most = 8;
const least: Probability = 0.001;

/** Reads the numbers of a position; nothing of it is in the log. */
export function numbersAt(derived: Derived, position: string): Numbers {
  const { model, evidence, beliefs } = derived;
  const { trouble, suspects, leading, choice } = derived.standing(position);
  const rig = build(evidence.era.course.state.rig);
  const [fault] = leading?.group.faults ?? [];
  const named = suspects.filter(
    ({ group, probability }, at) =>
      (at < most && probability >= least) || group.faults.some(isUnlisted),
  );
  const others = suspects.filter((one) => !named.includes(one));
  const under = (faults: readonly RigFault[]) => earsOf(earMatrix(rig, position, faults));
  return {
    trouble,
    suspects: named,
    others: { count: others.length, most: others[0]?.probability ?? 0 },
    sound: under([]),
    suspected: fault && { fault, ears: under([fault]) },
    options: optionsAt(model, evidence, beliefs, position).toSorted(
      (a, b) => b.bits / b.seconds - a.bits / a.seconds,
    ),
    choice,
  };
}

function earsOf(matrix: Matrix): Ears {
  const at = (ear: number, side: number): EarGain => {
    const gain = matrix[ear]?.[side] ?? { re: 0, im: 0 };
    return {
      level: toDecibels(size(gain)),
      degrees: (Math.atan2(gain.im, gain.re) * 180) / Math.PI,
    };
  };
  return [at(0, 0), at(0, 1), at(1, 0), at(1, 1)];
}

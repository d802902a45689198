import { chanceOfBending, misread } from "#core/diagnosis/continuity.ts";
import { information, type Prospect } from "#core/inference/information.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Ohms, Probability } from "#core/units/units.ts";
import { leadId } from "./lead-rig.ts";
import { type MeterBelief, readingsIn } from "./meter-belief.ts";
import {
  isJoined,
  isSamePair,
  kindOfOhms,
  type MeterView,
  meterView,
  type Pair,
  shows,
} from "./meter-view.ts";

/** What to put a meter to next. */
export interface NextReading {
  readonly asked: {
    readonly check: "continuity";
    readonly part: string;
    readonly from: string;
    readonly to: string;
  };
  /** The lead is bent meanwhile: where the two should be joined, a contact may come and go. */
  readonly bend: boolean;
  /** What the intended lead reads; an open circuit where it is left out. */
  readonly healthy?: Ohms;
  /** How much it is expected to tell. */
  readonly bits: number;
}

/** So often the same two contacts are read: a second time finds a probe that slipped, a third a contact that comes and goes. */
const mostTimes = 3;
/** A reading that tells less is not worth a hand. */
const worth = 0.003;

/**
 * The reading that tells most of what may be wrong with a lead; while nothing is wrong, of what was not tested yet. None where no reading tells
 * anything.
 */
export function nextReading(derived: Derived, belief: MeterBelief): NextReading | undefined {
  const { rig } = derived.model;
  const view = meterView(rig);
  const readings = readingsIn(derived.happenings);
  const times = (pair: Pair): number =>
    readings.filter(({ asked }) => isSamePair(asked, pair)).length;
  const [first] = belief.explanations;
  const sound = first?.healthy === true && first.probability > mostlyHealthy;
  const told = (pair: Pair): number =>
    sound && belief.untested.length > 0
      ? tested(view, pair, belief.untested)
      : bits(view, pair, belief);
  const free = view.pairs.filter((pair) => times(pair) < mostTimes);
  const best = free.reduce<{ pair: Pair; bits: number } | undefined>((most, pair) => {
    const here = told(pair) / (1 + times(pair) / 8);
    return most === undefined || here > most.bits + 1e-9 ? { pair, bits: here } : most;
  }, undefined);
  return best === undefined || best.bits < worth ? undefined : asking(view, best.pair, best.bits);
}

const mostlyHealthy: Probability = 0.5;

function asking(view: MeterView, pair: Pair, told: number): NextReading {
  const shown = view.shown([], pair);
  const [healthy = 0] = shown;
  const joined = isJoined(shown);
  return {
    asked: { check: "continuity", part: leadId, ...pair },
    bend: joined,
    ...(joined ? { healthy } : {}),
    bits: told,
  };
}

/** The odds of what was not tested yet and would show at two contacts. */
const tested = (view: MeterView, pair: Pair, untested: readonly RigFault[]): number =>
  untested
    .filter((fault) => shows(view, fault, pair))
    .reduce((sum, { weight }) => sum + 1 + weight / 1e4, 0);

/** What a reading is expected to tell of the explanations, in bits. */
function bits(view: MeterView, pair: Pair, { explanations }: MeterBelief): number {
  const joined = isJoined(view.shown([], pair));
  const all = explanations.map(({ sets, probability }) => ({
    probability,
    shown: view.shown(sets[0] ?? [], pair),
  }));
  const kinds = [...new Set(all.flatMap(({ shown }) => shown.map(kindOfOhms)))];
  return information(
    all.map(({ probability, shown }): Prospect => {
      const plain = kinds.map((kind) => {
        const share = shown.filter((one) => kindOfOhms(one) === kind).length / shown.length;
        return (1 - misread) * share + misread / kinds.length;
      });
      const changes = chanceOfBending(shown, "changes");
      const answers = joined ? plain.flatMap((p) => [p * changes, p * (1 - changes)]) : plain;
      return { probability, answers: Float64Array.from(answers) };
    }),
  );
}

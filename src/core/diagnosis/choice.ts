import { plan } from "#core/inference/plan.ts";
import type { Plan, Problem, Step } from "#core/inference/problem.ts";
import type { Move } from "#core/rig/moves.ts";
import { clientId } from "#core/rig/rig.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import type { Beliefs, Together } from "./beliefs.ts";
import type { Evidence } from "./evidence.ts";
import { type Mend, mendsAt } from "./mends.ts";
import type { Model } from "./model.ts";
import { type Doing, type Offer, offersAt } from "./offers.ts";

/** A first step, and the seconds to expect from here to a working rig when it is taken. */
export interface Choice {
  readonly doing: Doing;
  /** Of this step alone. */
  readonly cost: Seconds;
  readonly seconds: Seconds;
}

/** What to do next at a position where something is wrong, and what else was weighed, the cheapest first. */
export interface Chosen {
  readonly best: Choice | undefined;
  readonly others: readonly Choice[];
  readonly seconds: Seconds;
}

/** To hear after a repair whether it works. Handbook, section 8. */
const hearing: Seconds = 6;
/** So many things that may be wrong are weighed. */
const most = 30;
/** Somebody else has to see to it. Common practice, no source. */
const somebodyElse: Seconds = 600;

/**
 * The check, trial or repair at a position with the lowest expected time to a working rig. `well` names positions that are known to be
 * healthy. What cannot be done here, and what was done already, is not proposed.
 */
export function choiceAt(
  model: Model,
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
  well: readonly string[],
): Chosen {
  const together = beliefs.together(position).slice(0, most);
  const audible = model.audible(position);
  const made = new Set(evidence.era.course.moves.map((move) => JSON.stringify(move)));
  const can = (move: Move) =>
    !evidence.cannot.has(JSON.stringify(move)) && !made.has(JSON.stringify(move));
  const offers = offersAt({ model, evidence, position, together }, well).filter(
    ({ doing }) => doing.do === "ask" || can(doing.move),
  );
  const mends = mendsAt(evidence.era, position, evidence.seen).filter(({ move }) => can(move));
  const problem: Problem = {
    probabilities: Float64Array.from(together, ({ probability }) => probability),
    fine: together.map(({ behaviour }) => !audible(behaviour)),
    tests: offers.map(({ test }) => test),
    repairs: mends.map(({ seconds, cures }) => ({
      seconds: seconds + hearing,
      cures: Float64Array.from(together, ({ faults }) => curedOf(faults, cures)),
    })),
  };
  return read(plan(problem, { fallback: somebodyElse, beliefs: 150 }), offers, mends);
}

function read(made: Plan, offers: readonly Offer[], mends: readonly Mend[]): Chosen {
  const choice = (next: Step, seconds: Seconds): Choice | undefined => {
    const [offer, mend] = [offers, mends].map((list) =>
      next.step === "done" ? undefined : list[next.at],
    );
    if (next.step === "test" && offer && "test" in offer)
      return { doing: offer.doing, cost: offer.test.seconds, seconds };
    if (next.step === "repair" && mend && "cures" in mend)
      return { doing: doingOf(mend.move), cost: mend.seconds, seconds };
    return undefined;
  };
  return {
    best: choice(made.next, made.seconds),
    others: made.runnersUp.flatMap(({ next, seconds }) => choice(next, seconds) ?? []),
    seconds: made.seconds,
  };
}

/** A feed that is meant so is not mended: whoever ordered it is asked. */
const doingOf = (move: Move): Doing =>
  "place" in move && move.place === clientId
    ? { do: "ask", asked: { check: "look", place: clientId } }
    : { do: "mend", move };

/** How likely a move takes all away that is wrong; of two faults one is half the way. */
function curedOf(faults: Together["faults"], cures: Mend["cures"]): Probability {
  const shares = faults.map(cures);
  return shares.reduce((sum, share) => sum + share, 0) / Math.max(1, faults.length);
}

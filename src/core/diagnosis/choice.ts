import { catalogue } from "#core/checks/catalogue.ts";
import type { Asked } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { given, lookSlip } from "#core/checks/slips.ts";
import { predictTwist, twistSeconds } from "#core/checks/twist.ts";
import { plan } from "#core/inference/plan.ts";
import type { Plan, Problem, Step, Test } from "#core/inference/problem.ts";
import type { Move } from "#core/rig/moves.ts";
import { wornAt } from "#core/rig/rig.ts";
import type { Probability, Seconds } from "#core/units/units.ts";
import { answersTo, neighbour, walk } from "./asking.ts";
import type { Beliefs, Together } from "./beliefs.ts";
import type { Evidence } from "./evidence.ts";
import { type Mend, mendsAt } from "./mends.ts";
import type { Model } from "./model.ts";
import { trialsAt } from "./trials.ts";

/** What a person is told to do next. */
export type Doing =
  | { readonly do: "ask"; readonly asked: Asked }
  /** A move made to see what changes; then a check by ear. */
  | { readonly do: "try"; readonly move: Move }
  /** A move that may cure. */
  | { readonly do: "mend"; readonly move: Move };

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

interface Offer {
  readonly doing: Doing;
  readonly test: Test;
}

/** To hear after a repair whether it works. Handbook, section 8. */
const hearing: Seconds = 6;
/** Somebody else has to see to it. Common practice, no source. */
const somebodyElse: Seconds = 600;

/**
 * The check, trial or repair at a position with the lowest expected time to a working rig. `well` names positions that are known to be
 * healthy; what `cannot` names is not to be had here.
 */
export function choiceAt(
  model: Model,
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
  well: readonly string[],
): Chosen {
  const together = beliefs.together(position);
  const audible = model.audible(position);
  const can = (move: Move) => !evidence.cannot.has(JSON.stringify(move));
  const offers = offersAt({ model, evidence, beliefs, position, together }, well).filter(
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
  return read(plan(problem, { fallback: somebodyElse }), offers, mends);
}

function read(made: Plan, offers: readonly Offer[], mends: readonly Mend[]): Chosen {
  const choice = (next: Step, seconds: Seconds): Choice | undefined => {
    const [offer, mend] = [offers, mends].map((list) =>
      next.step === "done" ? undefined : list[next.at],
    );
    if (next.step === "test" && offer && "test" in offer)
      return { doing: offer.doing, cost: offer.test.seconds, seconds };
    if (next.step === "repair" && mend && "cures" in mend)
      return { doing: { do: "mend", move: mend.move }, cost: mend.seconds, seconds };
    return undefined;
  };
  return {
    best: choice(made.next, made.seconds),
    others: made.runnersUp.flatMap(({ next, seconds }) => choice(next, seconds) ?? []),
    seconds: made.seconds,
  };
}

/** How likely a move takes all away that is wrong; of two faults one is half the way. */
function curedOf(faults: Together["faults"], cures: Mend["cures"]): Probability {
  const shares = faults.map(cures);
  return shares.reduce((sum, share) => sum + share, 0) / Math.max(1, faults.length);
}

interface Asking {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly beliefs: Beliefs;
  readonly position: string;
  readonly together: readonly Together[];
}

const offersAt = (asking: Asking, well: readonly string[]): readonly Offer[] => [
  ...byEar(asking),
  ...byEye(asking),
  ...byTwist(asking),
  ...atNeighbour(asking),
  ...byTrial(asking, well),
];

const byEar = ({ model, evidence, position, together }: Asking): readonly Offer[] =>
  catalogue.map((check) => ({
    doing: { do: "ask", asked: { check: check.name, position } },
    test: {
      seconds: check.seconds,
      answers: together.map(({ behaviour }) =>
        answersTo(model, evidence, behaviour, position, check),
      ),
    },
  }));

function byEye({ model, evidence, position, together }: Asking): readonly Offer[] {
  const way = evidence.era.onTheWay(position);
  const places = new Set([...way].flatMap((fault) => (fault.seen ? [fault.place] : [])));
  return model.looks
    .filter(({ place }) => places.has(place) && !evidence.seen.has(place))
    .map((look) => ({
      doing: { do: "ask", asked: { check: "look", place: look.place } },
      test: {
        seconds: look.seconds,
        answers: together.map(({ faults }) =>
          given(predictLook(look, sightsOf(look, faults)), lookSlip),
        ),
      },
    }));
}

/** Plugs that were not twisted since they were touched, of what is worn: where contacts make and break most. */
function byTwist({ evidence, position, together }: Asking): readonly Offer[] {
  const part = wornAt(evidence.era.course.state.rig, position);
  const plugs = evidence.era.course.state.rig.plugged.filter((one) => one.part === part);
  return plugs
    .filter(({ plug }) => !evidence.twisted.has(`${part} ${plug}`))
    .map(({ plug }) => ({
      doing: { do: "ask", asked: { check: "twist", part, plug } },
      test: {
        seconds: twistSeconds,
        answers: together.map(({ faults }) =>
          given(
            predictTwist(
              faults.filter((one) => one.part === part && (one.at === plug || one.at === "body")),
            ),
            lookSlip,
          ),
        ),
      },
    }));
}

/** A check at another position tells what both share; what is that position's own counts as well. */
function atNeighbour({ model, evidence, position, together }: Asking): readonly Offer[] {
  const other = neighbour(model, evidence, position);
  if (other === undefined) return [];
  const way = evidence.era.onTheWay(other);
  return catalogue
    .filter(({ required }) => required)
    .map((check) => ({
      doing: { do: "ask", asked: { check: check.name, position: other } },
      test: {
        seconds: check.seconds + walk,
        answers: together.map(({ faults }) =>
          answersTo(
            model,
            evidence,
            model.under(
              other,
              faults.filter((fault) => way.has(fault)),
            ),
            other,
            check,
          ),
        ),
      },
    }));
}

function byTrial(
  { model, evidence, position, together }: Asking,
  well: readonly string[],
): readonly Offer[] {
  return trialsAt(model, evidence.era, position, well).flatMap(({ move, seconds, after }) =>
    catalogue
      .filter(({ required }) => required)
      .map((check) => ({
        doing: { do: "try", move },
        test: {
          seconds: seconds + check.seconds,
          answers: together.map(({ faults }) => model.answers(check, position)(after(faults))),
        },
      })),
  );
}

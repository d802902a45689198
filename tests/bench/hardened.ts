import { catalogue } from "#core/checks/catalogue.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { predictTwist, twistSeconds } from "#core/checks/twist.ts";
import { walk } from "#core/diagnosis/asking.ts";
import { mendsAt } from "#core/diagnosis/mends.ts";
import { wornAt } from "#core/rig/rig.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { seeded } from "#core/units/random.ts";
import { toHear } from "./costs.ts";
import type { Certain } from "./optimum.ts";
import { drawnFrom } from "./person.ts";
import { oneOf, rigOf } from "./rigs.ts";

/** The most hypotheses of a problem: dynamic programming over subsets has as many states as these have subsets. */
const mostHypotheses = 15;
/** The most repairs that cure by half, for the same reason. */
const mostInPart = 2;

type Together = ReturnType<Derived["beliefs"]["together"]>;

const likeliest = (chances: Float64Array): number => chances.indexOf(Math.max(...chances));

/**
 * The trouble of a position of a seeded rig that nobody has heard yet, thinned to at most fifteen hypotheses drawn by their odds, each
 * test hardened to its likeliest answer, with the rig's own seconds. Under an odd seed something is known to be wrong.
 */
export function hardenedOf(seed: number): Certain {
  const random = seeded(seed * 31 + 7);
  const derived = derive(add([], { entry: "drawing", rig: rigOf(seed, 4) }, 0));
  if (derived === undefined) throw new Error("the log draws no rig");
  const position = oneOf(derived.model.root.positions, random);
  const size = 4 + Math.floor(random() * (mostHypotheses - 3));
  const audible = derived.model.audible(position);
  const all = derived.beliefs.together(position);
  const wrong = all.filter(({ behaviour }) => audible(behaviour));
  const some = thinned(seed % 2 === 0 ? all : wrong, size, random);
  return {
    odds: some.map(({ probability }) => probability),
    fine: some.map(({ behaviour }) => !audible(behaviour)),
    tests: [
      ...byEar(derived, position, some),
      ...elsewhere(derived, position, some),
      ...byEye(derived, position, some),
      ...byHand(derived, position, some),
    ],
    repairs: repairsOf(derived, position, some),
  };
}

/** Drawn by odds, none twice. */
function thinned(all: Together, size: number, random: () => number): Together {
  const left = [...all];
  const some: Together[number][] = [];
  while (some.length < size && left.length > 0) {
    const at = drawnFrom(
      Float64Array.from(left, ({ probability }) => probability),
      random,
    );
    some.push(...left.splice(at, 1));
  }
  return some;
}

const byEar = ({ model }: Derived, position: string, some: Together): Certain["tests"] =>
  catalogue.map((check) => ({
    seconds: check.seconds,
    answer: some.map(({ behaviour }) => likeliest(model.answers(check, position)(behaviour))),
  }));

/** The required checks at the next seat. */
function elsewhere({ model, evidence }: Derived, position: string, some: Together) {
  const { positions } = model.root;
  const other = positions[(positions.indexOf(position) + 1) % positions.length];
  if (other === undefined || other === position) return [];
  const way = evidence.era.onTheWay(other);
  return catalogue
    .filter(({ required }) => required)
    .map((check) => ({
      seconds: check.seconds + walk,
      answer: some.map(({ faults }) =>
        likeliest(
          model.answers(
            check,
            other,
          )(
            model.under(
              other,
              faults.filter((fault) => way.has(fault)),
            ),
          ),
        ),
      ),
    }));
}

const byEye = ({ model }: Derived, position: string, some: Together): Certain["tests"] =>
  model
    .wayTo(position)
    .flatMap(({ looks }) => looks)
    .map((look) => ({
      seconds: look.seconds,
      answer: some.map(({ faults }) => likeliest(predictLook(look, sightsOf(look, faults)))),
    }));

function byHand({ model }: Derived, position: string, some: Together): Certain["tests"] {
  const worn = wornAt(model.drawn, position);
  return model.drawn.plugged
    .filter(({ part }) => part === worn)
    .map(({ plug }) => ({
      seconds: twistSeconds,
      answer: some.map(({ faults }) =>
        likeliest(
          predictTwist(
            faults.filter((one) => one.part === worn && (one.at === plug || one.at === "body")),
          ),
        ),
      ),
    }));
}

/** What cures in part counts for the first few; of two faults one is half the way. */
function repairsOf({ evidence }: Derived, position: string, some: Together): Certain["repairs"] {
  let inPart = 0;
  return mendsAt(evidence.era, position, new Set()).map(({ seconds, cures }) => {
    const shares = some.map(
      ({ faults }) =>
        faults.reduce((sum, fault) => sum + cures(fault), 0) / Math.max(1, faults.length),
    );
    const partly = shares.some((share) => share > 0 && share < 1);
    inPart += Number(partly);
    const whole = partly && inPart > mostInPart;
    return {
      seconds: seconds + toHear,
      cures: whole ? shares.map((share) => Math.floor(share)) : shares,
    };
  });
}

import type { Option } from "#core/diagnosis/options.ts";
import type { Move } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import type { Probability } from "#core/units/units.ts";
import type { Method } from "./choice.ts";
import { leadId, provedAt } from "./lead-rig.ts";
import { isOwn, type MeterBelief, meterBelief } from "./meter-belief.ts";
import { type NextReading, nextReading } from "./next-reading.ts";

/** What is to be done next to prove a lead. */
export type Next =
  | { readonly next: "read"; readonly reading: NextReading }
  | { readonly next: "ask"; readonly asked: Option["asked"] }
  | { readonly next: "do"; readonly move: Move };

/** How far a lead is proved. */
export interface Proof {
  /** Going on: there is something to do next. Unsure: nothing on offer tells more. */
  readonly state: "going on" | "healthy" | "wrong" | "unsure";
  readonly next?: Next;
  /** All that is taken to be wrong together: the likeliest that goes with what was found; nothing where the lead is healthy. */
  readonly believed: readonly RigFault[];
  /** Everything of which one is wrong, the likeliest first: nothing that this way of proving offers tells them apart. */
  readonly alike: readonly RigFault[];
  /** How likely it is that one of these is wrong, or that nothing is. */
  readonly probability: Probability;
  /** By a meter: what may be wrong besides and was not tested, since readings stop when one thing is found. It is proved again once that is mended. */
  readonly untested: readonly RigFault[];
}

/** How sure a proof is. */
const sureEnough: Probability = 0.95;

/** How far the lead of a log's rig is proved in one way, and what to do next. */
export const proofOf = (derived: Derived, by: Method): Proof =>
  by === "meter" ? byMeter(derived) : byPosition(derived);

function byMeter(derived: Derived): Proof {
  const belief = meterBelief(derived);
  const [first] = belief.explanations;
  if (first === undefined) throw new Error("nothing is believed of this rig");
  const found = foundBy(derived, belief);
  const settled = first.probability >= sureEnough && (!first.healthy || !belief.untested.length);
  if (settled) return { ...found, state: first.healthy ? "healthy" : "wrong" };
  const reading = nextReading(derived, belief);
  if (reading !== undefined)
    return { ...found, state: "going on", next: { next: "read", reading } };
  return { ...found, state: "unsure" };
}

/** What a meter makes likeliest. */
function foundBy(
  derived: Derived,
  { explanations: [first], untested }: MeterBelief,
): Omit<Proof, "state" | "next"> {
  const sets = first === undefined || first.healthy ? [] : first.sets;
  const own = (faults: readonly RigFault[]) => faults.filter((fault) => isOwn(derived, fault));
  const fewest = Math.min(...sets.map((set) => own(set).length));
  const least = sets.map(own).filter(({ length }) => length === fewest);
  return {
    believed: least[0] ?? [],
    alike: [...new Set(least.flat())],
    probability: first?.probability ?? 0,
    untested,
  };
}

function byPosition(derived: Derived): Proof {
  const { advice, leading, trouble } = derived.standing(provedAt);
  const sound = { believed: [], alike: [], probability: 1 - trouble, untested: [] };
  if (advice.advice === "healthy") return { ...sound, state: "healthy" };
  const alike = leading?.group.faults ?? [];
  const wrong = {
    believed: togetherWith(derived, alike),
    alike,
    probability: leading?.probability ?? 0,
    untested: [],
  };
  const found = trouble < 0.5 ? sound : wrong;
  switch (advice.advice) {
    case "ask":
      return { ...found, state: "going on", next: { next: "ask", asked: advice.option.asked } };
    case "do":
      return { ...found, state: "going on", next: { next: "do", move: advice.move } };
    case "verdict": {
      if (advice.sure) return { ...wrong, state: "wrong" };
      const asked = unlookedAt(derived);
      return asked === undefined
        ? { ...wrong, state: "unsure" }
        : { ...wrong, state: "going on", next: { next: "ask", asked } };
    }
  }
}

/** Where a repair is sooner tried than a look taken, whoever proves a lead looks all the same: what is wrong is to be named. */
function unlookedAt({
  evidence,
  model,
}: Derived): Extract<Next, { next: "ask" }>["asked"] | undefined {
  const look = model.looks.find(({ place }) => place === leadId && !evidence.seen.has(place));
  return look === undefined ? undefined : { check: "look", place: leadId };
}

/** The likeliest set that has one of some faults. */
const togetherWith = ({ beliefs }: Derived, alike: readonly RigFault[]): readonly RigFault[] =>
  beliefs.together(provedAt).find(({ faults }) => faults.some((fault) => alike.includes(fault)))
    ?.faults ?? alike.slice(0, 1);

import type { Probability } from "#core/units/units.ts";
import type { Beliefs } from "./beliefs.ts";
import type { Chosen } from "./choice.ts";
import { type Decision, decisionAt, type Ending } from "./deciding.ts";
import type { Evidence } from "./evidence.ts";
import { isUnlisted } from "./fault-sets.ts";
import type { Group } from "./groups.ts";
import { type Mend, mendFor } from "./mends.ts";
import type { Model } from "./model.ts";
import { living } from "./so-far.ts";
import { culpritsOf, type Suspect, suspectsOf, troubleAt, unheardAt } from "./suspects.ts";

/** What a position needs now. */
export type Advice = Exclude<Decision, Ending> | Verdict;

/** Nothing is left to ask: what is wrong, and what to do about it. */
export interface Verdict extends Ending {
  /** The repair to make now, where one can be made here. */
  readonly mend: Pick<Mend, "move" | "seconds"> | undefined;
}

/** What is known of one position, and what to do about it. */
export interface Standing {
  readonly position: string;
  readonly trouble: Probability;
  /** How likely something is wrong that cannot be heard: it is never named, and listed under 'not tested'. */
  readonly unheard: Probability;
  readonly suspects: readonly Suspect[];
  /** What a move took away or laid aside, that had been wrong here. */
  readonly culprits: readonly Suspect[];
  /** Whom a verdict names: the likeliest, or 'something not on the list' where the answers go with none that is likely. */
  readonly leading: Suspect | undefined;
  readonly advice: Advice;
  /** What was weighed once something seemed wrong, the cheapest first: why this next. */
  readonly choice: Chosen | undefined;
}

/** Less likely than this, or after so many, and a suspect is not shown. */
const worthShowing: Probability = 0.003;
const mostShown = 5;

/** The suspects a verdict shows: whom it names, then those that are not ruled out. */
export function shownIn({ leading, suspects }: Standing): readonly Suspect[] {
  const others = suspects.filter((one) => one !== leading && one.probability >= worthShowing);
  return [...(leading === undefined ? [] : [leading]), ...others.slice(0, mostShown)];
}

/** The standing of one position: how likely trouble is there, who is suspected, what to do next. */
export function standingAt(
  model: Model,
  groups: readonly Group[],
  evidence: Evidence,
  beliefs: Beliefs,
  position: string,
): Standing {
  const suspects = suspectsOf(living(groups, evidence, position), beliefs);
  const trouble = troubleAt(model, beliefs, position);
  const { decision, choice } = decisionAt(
    { model, evidence, beliefs, position },
    suspects,
    trouble,
  );
  const leading = leadingOf(suspects, decision);
  return {
    position,
    trouble,
    get unheard() {
      return unheardAt(model, beliefs, position); // only when it is asked for: it looks at everything that may be together
    },
    suspects,
    culprits: culpritsOf(groups, beliefs, position),
    leading,
    advice:
      decision.advice === "verdict"
        ? { ...decision, mend: mended(choice) ?? mendOf(leading, evidence, position) }
        : decision,
    choice,
  };
}

/** What was weighed against all else, where it is a repair. */
function mended(choice: Chosen | undefined): Verdict["mend"] {
  const best = choice?.best;
  return best?.doing.do === "mend" ? { move: best.doing.move, seconds: best.cost } : undefined;
}

/** What mends whom a verdict names. */
function mendOf(leading: Suspect | undefined, evidence: Evidence, position: string) {
  const [fault] = leading?.group.faults ?? [];
  return fault && mendFor(evidence, position, fault);
}

function leadingOf(suspects: readonly Suspect[], decision: Decision): Suspect | undefined {
  const [first] = suspects;
  if (decision.advice !== "verdict" || decision.fits || (first?.probability ?? 0) > 0.5)
    return first;
  return suspects.find(({ group }) => group.faults.some(isUnlisted)) ?? first;
}

import type { Repair } from "./repair-order.ts";

/** A question that can be put, or a look that can be taken: once, since asked twice it gives the same judgement. */
export interface Test {
  readonly seconds: number;
  /** For each hypothesis one probability for each answer, slips included; as many answers under every hypothesis. */
  readonly answers: readonly Float64Array[];
}

/** What may be wrong, what can be asked, and what can be mended. Any list may be empty. */
export interface Problem {
  /** One for each hypothesis; taken in proportion. */
  readonly probabilities: Float64Array;
  /** Hypotheses under which nothing needs mending. */
  readonly fine: readonly boolean[];
  readonly tests: readonly Test[];
  /** Each can be done once. After it one hears whether all is well; if not, what it did not cure remains, in proportion. */
  readonly repairs: readonly Omit<Repair, "mending">[];
}

/** What to do next: `at` is a place in the problem's list. Done: what remains is fine, or is left to somebody else. */
export type Step =
  | { readonly step: "test"; readonly at: number }
  | { readonly step: "repair"; readonly at: number }
  | { readonly step: "done" };

/** A first step, and the expected seconds from here to a rig that works if it is taken and all goes on for the best. */
export interface Choice {
  readonly next: Step;
  readonly seconds: number;
}

/** What to do next, and what else was considered, the best first. */
export interface Plan extends Choice {
  readonly runnersUp: readonly Choice[];
  /** The seconds are no estimate but the least there are, with no more hypotheses and answers than were told apart. */
  readonly exact: boolean;
}

/** How far to go in making a plan. */
export interface PlanOptions {
  /** Seconds it costs to stop where something is still wrong: to call somebody, to do without. Default 600. */
  readonly fallback?: number;
  /** The most hypotheses told apart; the rest join the one most like them. At most 20. Default 15. */
  readonly hypotheses?: number;
  /** The most answers of a test told apart. Default 8. */
  readonly answers?: number;
  /** The most sets of hypotheses gone into where answers are certain. Default 2000. */
  readonly sets?: number;
  /** The most beliefs met where they are not. Default 500. */
  readonly beliefs?: number;
}

import type { Move } from "#core/rig/moves.ts";
import type { EarCheckName } from "./check.ts";

/** What was asked: a check by ear at a position, or a look at a place. */
export type Asked =
  | { readonly check: EarCheckName; readonly position: string }
  | { readonly check: "look"; readonly place: string };

/** What was found: for each question the answers it may have been; one if it was clear, all of them for 'can't tell'. */
export interface Finding {
  readonly asked: Asked;
  readonly results: readonly (readonly string[])[];
}

/** What happened, in order: findings hold for the rig as the moves before them left it. */
export type Happening =
  | { readonly kind: "finding"; readonly finding: Finding }
  | { readonly kind: "move"; readonly move: Move };

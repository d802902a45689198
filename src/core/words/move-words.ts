import type { Move } from "#core/rig/moves.ts";

type Named<Name extends Move["move"]> = Extract<Move, { readonly move: Name }>;

/** What is said of one kind of move: as an instruction without its full stop, and as the log has it. */
interface Words<One extends Move> {
  readonly tell: (move: One, name: (id: string) => string) => string;
  readonly told: (move: One, name: (id: string) => string) => string;
}

/** The words for every kind of move. */
export type MoveWords = { readonly [Name in Move["move"]]: Words<Named<Name>> };

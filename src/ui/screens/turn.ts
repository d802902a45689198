import type { Claim, Turns } from "#storage/turns.ts";

/** The page's wish to write one session at a time. */
export class Turn {
  readonly #turns: Pick<Turns, "claim">;
  readonly #told: (mine: boolean) => void;
  #claimed: { readonly session: string; claim?: Claim } | undefined;

  constructor(turns: Pick<Turns, "claim">, told: (mine: boolean) => void) {
    this.#turns = turns;
    this.#told = told;
  }

  /** Wishes to write a session, and lets the one before go. Says whether that is a change. */
  wish(session: string | undefined): boolean {
    if (session === this.#claimed?.session) return false;
    this.#claimed?.claim?.give();
    const claimed = session === undefined ? undefined : { session };
    this.#claimed = claimed;
    if (claimed === undefined) return true;
    const claim = this.#turns.claim(claimed.session, (mine) => {
      if (this.#claimed?.session === claimed.session) this.#told(mine);
    });
    this.#claimed = { ...claimed, claim };
    return true;
  }

  /** Writes it from now on, whoever did before. */
  take(): void {
    this.#claimed?.claim?.take();
  }
}

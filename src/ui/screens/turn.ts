import type { Claim, Turns } from "#storage/turns.ts";

/** The page's wish to write one session at a time. */
export class Turn {
  readonly #turns: Pick<Turns, "claim">;
  readonly #told: (mine: boolean) => void;
  #wished: string | undefined;
  #claimed: { readonly session: string; readonly claim: Claim } | undefined;
  #mine = false;
  #answered: Promise<void> = Promise.resolve();

  constructor(turns: Pick<Turns, "claim">, told: (mine: boolean) => void) {
    this.#turns = turns;
    this.#told = told;
  }

  /** Notes which session is to be written. Says whether that is a change. */
  wish(session: string | undefined): boolean {
    const changed = session !== this.#wished;
    this.#wished = session;
    return changed;
  }

  /** Until it is known who writes what was claimed last. */
  get answered(): Promise<void> {
    return this.#answered;
  }

  /** A session that was never claimed is known to no other tab, or is not in hand any more. */
  mayWrite(session: string): boolean {
    return session !== this.#claimed?.session || this.#mine;
  }

  /** Claims what was wished for last, and lets the one before go. Says whether that is a change. */
  settle(): boolean {
    const session = this.#wished;
    if (session === this.#claimed?.session) return false;
    this.#claimed?.claim.give();
    this.#claimed = session === undefined ? undefined : { session, claim: this.#claim(session) };
    return true;
  }

  /** Writes it from now on, whoever did before. */
  take(): void {
    this.#claimed?.claim.take();
  }

  #claim(session: string): Claim {
    this.#mine = false;
    let answer = (): void => undefined;
    this.#answered = new Promise((resolve) => {
      answer = resolve;
    });
    return this.#turns.claim(session, (mine) => {
      answer();
      if (this.#claimed?.session !== session) return;
      this.#mine = mine;
      this.#told(mine);
    });
  }
}

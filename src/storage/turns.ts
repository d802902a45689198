/** A wish to write a session, while it lasts. */
export interface Claim {
  /** Writes from now on, whoever did before. */
  readonly take: () => void;
  /** Lets it go, so that another tab may write. */
  readonly give: () => void;
}

/** Which of several tabs writes a session, and word of what it wrote. No member ever throws. */
export interface Turns {
  /** Wishes to write a session; tells whether one may, first and whenever that changes. */
  readonly claim: (session: string, told: (mine: boolean) => void) => Claim;
  /** Says to the other tabs that something of a session was written. */
  readonly tell: (session: string) => void;
  /** Hears what other tabs say; returns how to stop that. */
  readonly hear: (listener: (session: string) => void) => () => void;
}

const channelName = "leftwright";

/**
 * By the browser's own locks, which it lets go when a tab ends in whatever way, and its channel between tabs. Where there are no locks
 * everybody may write: the database itself lets no place be written twice, and says so.
 */
export function createTurns(): Turns {
  const locks: LockManager | undefined = navigator.locks;
  const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel(channelName) : undefined;
  return {
    claim: (session, told) => {
      if (locks !== undefined) return new Wish(locks, `${channelName} ${session}`, told);
      queueMicrotask(() => told(true));
      return { take: () => told(true), give: () => undefined };
    },
    tell: (session) => channel?.postMessage(session),
    hear: (listener) => {
      const on = ({ data }: MessageEvent<unknown>) => listener(String(data));
      channel?.addEventListener("message", on);
      return () => channel?.removeEventListener("message", on);
    },
  };
}

/** One lock that is wished for: asked for at once, waited for where another tab has it, and waited for again where it was taken. */
class Wish implements Claim {
  readonly #locks: LockManager;
  readonly #name: string;
  readonly #told: (mine: boolean) => void;
  #over = false;
  #let: (() => void) | undefined;
  #waiting = new AbortController();

  constructor(locks: LockManager, name: string, told: (mine: boolean) => void) {
    this.#locks = locks;
    this.#name = name;
    this.#told = told;
    this.#ask({ ifAvailable: true });
  }

  readonly take = (): void => {
    this.#waiting.abort();
    this.#ask({ steal: true });
  };

  readonly give = (): void => {
    this.#over = true;
    this.#waiting.abort();
    this.#let?.();
  };

  #ask(options: LockOptions): void {
    this.#locks
      .request(this.#name, options, (lock) => {
        if (this.#over) return undefined;
        if (lock !== null) return this.#have();
        this.#told(false);
        this.#wait();
        return undefined;
      })
      .catch((error: unknown) => this.#lost(error));
  }

  /** Held until it is given up. */
  #have(): Promise<void> {
    this.#told(true);
    return new Promise((resolve) => {
      this.#let = resolve;
    });
  }

  #wait(): void {
    this.#waiting = new AbortController();
    this.#ask({ signal: this.#waiting.signal });
  }

  /** Another tab took it; a wait that was called off is no loss. Where locks are refused, for whatever reason, everybody may write. */
  #lost(error: unknown): void {
    if (this.#over) return;
    const refused = !(error instanceof DOMException && error.name === "AbortError");
    if (refused) this.#told(true);
    if (refused || this.#let === undefined) return;
    this.#let = undefined;
    this.#told(false);
    this.#wait();
  }
}

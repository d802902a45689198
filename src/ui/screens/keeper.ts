import type { Log } from "#core/session/log.ts";
import type { Kept, Reading, Store } from "#storage/store.ts";
import type { Notice } from "#ui/words/notice.ts";
import { about, changeOf, noticeOf, troubleNotice } from "./keeper-words.ts";
import { holding, inHand, isOf, type Keeping, type Shown } from "./keeping.ts";
import type { Page } from "./page.ts";
import { Turn } from "./turn.ts";

/** A disk that takes longer than this is not waited for any more; ms. */
const patience = 1000;

/**
 * Keeps the log: a press that makes an entry is written first and shown then, so that what is on the screen is on the disk. A press on a
 * screen that was drawn before the last entry counts no more, so that nothing is entered twice.
 */
export class Keeper {
  readonly #store: Store;
  readonly #now: () => number;
  #page: Page;
  #keeping: Keeping = { session: undefined, kept: 0, follows: false, read: false };
  /** The place of the next entry on the disk. */
  #next = 0;
  #writing: Promise<void> = Promise.resolve();
  #pending = 0;
  readonly #turn: Turn;
  #show: (shown: Shown) => void = () => undefined;

  constructor(store: Store, page: Page, now: () => number) {
    this.#store = store;
    this.#page = page;
    this.#now = now;
    this.#turn = new Turn(store, (mine) => this.#soon(() => this.#toldMine(mine)));
  }

  get shown(): Shown {
    return { page: this.#page, keeping: this.#keeping };
  }

  /** Looks for what was kept, and listens to other tabs; returns how to stop that. */
  readonly start = (show: (shown: Shown) => void): (() => void) => {
    this.#show = show;
    const stop = this.#store.hear((session) => {
      if (session === this.#keeping.session) this.#soon(() => this.#readOn());
    });
    void this.#store.last().then((reading) => this.#found(reading));
    return () => {
      stop();
      this.#turn.wish(undefined);
      this.#show = () => undefined;
    };
  };

  /** Changes the page. Where that makes entries they are written, and shown once they are. */
  readonly change = (how: (page: Page) => Page): void => {
    const before = this.#page;
    const page = how(before);
    const kind = changeOf(before.log, page.log);
    if (kind === "stale" || (kind === "more" && this.#keeping.follows)) return;
    this.#page = page;
    if (kind === "another") this.#anew();
    if (kind !== "none" && page.log.length > 0) this.#write();
    else if (this.#pending === 0) this.#show(this.shown);
    this.#wish();
    this.#mark(before);
  };

  /** Goes on with a session that was kept. */
  readonly open = (kept: Kept, page: (page: Page) => Page): void => {
    this.#soon(async () => {
      this.#take(kept, page(this.#page));
      await this.#store.mark(kept.session, (card) => ({ ...card, opened: this.#now() }));
    });
  };

  /** Writes from now on, where another tab did. */
  readonly takeOver = (): void => this.#turn.take();

  #found({ kept, unread, trouble }: Reading): void {
    const notice = noticeOf(unread, kept !== undefined, trouble);
    this.#keeping = { ...this.#keeping, read: true };
    const begun = this.#page.log.length > 0;
    if (kept !== undefined && !begun) this.#take(kept, { ...this.#page, notice });
    else {
      if (!begun) this.#page = { ...this.#page, notice: notice ?? this.#page.notice };
      this.#show(this.shown);
    }
  }

  #take({ session, log, seed, position, next }: Kept, page: Page): void {
    this.#page = { ...page, log, seed };
    this.#next = next;
    const kept = next === 0 ? 0 : log.length;
    const keeping: Keeping = { session, kept, follows: false, read: true };
    this.#keeping = holding(keeping, { position });
    this.#show(this.shown);
    this.#wish();
  }

  /** Another session, or none. */
  #anew(): void {
    const { session } = this.#keeping;
    const { log, seed } = this.#page;
    if (log.length === 0 && session !== undefined)
      this.#soon(() => this.#store.mark(session, (card) => ({ ...card, opened: 0 })));
    if (log.length > 0 && seed === undefined) this.#store.persist();
    this.#next = 0;
    const name = log.length === 0 ? undefined : this.#store.name();
    this.#keeping = { session: name, kept: 0, follows: false, read: this.#keeping.read };
  }

  #write(): void {
    this.#pending += 1;
    const late = setTimeout(() => {
      this.#notice("late");
      this.#show(this.shown);
    }, patience);
    const { session } = this.#keeping;
    const { log, seed } = this.#page;
    this.#soon(async () => {
      if (session !== undefined) await this.#writeNow(session, log, seed);
      clearTimeout(late);
      this.#pending -= 1;
      if (this.#pending === 0) this.#show(this.shown);
    });
  }

  async #writeNow(session: string, log: Log, seed: number | undefined): Promise<void> {
    const entries = log.slice(this.#keeping.session === session ? this.#keeping.kept : 0);
    const place = this.#keeping.session === session ? this.#next : 0;
    const at = this.#now();
    const told = await this.#store.keep({ session, place, entries, whole: log, seed, at });
    if (session !== this.#keeping.session) return;
    if ("value" in told) {
      this.#next = told.value;
      this.#keeping = { ...this.#keeping, kept: log.length };
      this.#notice(undefined, about);
    } else if (told.trouble === "taken") await this.#giveWay(session);
    else this.#notice(troubleNotice[told.trouble]);
  }

  /** Another tab wrote there: what it wrote holds, and the press is to be made again. */
  async #giveWay(session: string): Promise<void> {
    this.#page = { ...this.#page, log: this.#page.log.slice(0, this.#keeping.kept) };
    await this.#readOn();
    if (session === this.#keeping.session) this.#notice("taken");
  }

  /** What another tab has written meanwhile. What is not on the disk yet comes after it is written. */
  async #readOn(): Promise<void> {
    const { session, kept } = this.#keeping;
    if (session === undefined || kept < this.#page.log.length) return;
    const told = await this.#store.more(session, this.#next, this.#page.log);
    const moved = session !== this.#keeping.session || kept < this.#page.log.length;
    if ("trouble" in told || told.value.next <= this.#next || moved) return;
    const log = [...this.#page.log, ...told.value.log];
    this.#next = told.value.next;
    this.#keeping = { ...this.#keeping, kept: log.length };
    this.#page = { ...this.#page, log };
    this.#show(this.shown);
  }

  #notice(notice: Notice | undefined, instead?: readonly Notice[]): void {
    const { notice: now } = this.#page;
    if (instead !== undefined && (now === undefined || !instead.includes(now))) return;
    this.#page = { ...this.#page, notice };
  }

  /** One after the other. */
  #soon(work: () => Promise<unknown>): void {
    this.#writing = this.#writing.then(work).then(() => undefined);
  }

  /** Wishes to write the session once it is gone on with, and lets it go on the screens that are of none. */
  #wish(): void {
    const { session } = this.#keeping;
    const wanted = isOf(this.#page.view) ? session : undefined;
    if (this.#turn.wish(wanted)) this.#seat(false);
  }

  async #toldMine(mine: boolean): Promise<void> {
    await this.#readOn();
    this.#seat(!mine);
  }

  #seat(follows: boolean): void {
    if (follows === this.#keeping.follows) return;
    this.#keeping = { ...this.#keeping, follows };
    this.#show(this.shown);
  }

  /** Notes which position is in hand, to come back to. */
  #mark(before: Page): void {
    const { session, follows } = this.#keeping;
    const hand = before.view === this.#page.view ? undefined : inHand(this.#page.view);
    if (session === undefined || follows || hand === undefined) return;
    this.#keeping = holding(this.#keeping, hand);
    this.#soon(() => this.#store.mark(session, (card) => holding(card, hand)));
  }
}

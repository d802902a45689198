import type { Log } from "#core/session/log.ts";
import type { Trouble } from "#storage/shelf.ts";
import type { Kept, Reading, Store } from "#storage/store.ts";
import type { Notice } from "#ui/words/notice.ts";
import { InOrder } from "./in-order.ts";
import { changeOf, namesOnly, noticeAfter, noticeOf, standing } from "./keeper-words.ts";
import { holding, inHand, isOf, type Keeping, type Shown } from "./keeping.ts";
import type { Page, View } from "./page.ts";
import { Turn } from "./turn.ts";
import { readOn, Unwritten, type Written } from "./unwritten.ts";

/**
 * Keeps the log: a press that makes an entry is written first and shown then, so that what is on the screen is on the disk. A press on a
 * screen that does not show the last entry yet makes none, so that nothing is entered twice; but what somebody typed is entered.
 */
export class Keeper {
  readonly #store: Store;
  readonly #now: () => number;
  #page: Page;
  #keeping: Omit<Keeping, "kept"> = { session: undefined, follows: false };
  /** The session in hand. */
  #written: Written | undefined;
  readonly #unwritten: Unwritten;
  /** The log that was shown last. */
  #seen: Log;
  readonly #disk = new InOrder();
  /** What is in the way of something that is not on the disk; it is said until that is. */
  #amiss: Notice | undefined;
  readonly #turn: Turn;
  #show: (shown: Shown) => void = () => undefined;

  constructor(store: Store, page: Page, now: () => number) {
    this.#store = store;
    this.#page = page;
    this.#seen = page.log;
    this.#now = now;
    this.#unwritten = new Unwritten(store, now, (one) => this.#gaveWay(one));
    this.#turn = new Turn(store, (mine) =>
      this.#disk.soon(() => this.#readOn().then(() => this.#seat(!mine))),
    );
  }

  get shown(): Shown {
    return { page: this.#page, keeping: { ...this.#keeping, kept: this.#unwritten.isEmpty } };
  }

  /** Looks for what was kept, and listens to other tabs; returns how to stop that. */
  readonly start = (show: (shown: Shown) => void): (() => void) => {
    this.#show = show;
    const stop = this.#store.hear((session) => {
      if (session === this.#keeping.session) this.#disk.soon(() => this.#readOn());
    });
    void this.#store.last().then((reading) => this.#found(reading));
    return () => {
      stop();
      this.#wish(undefined);
      this.#show = () => undefined;
    };
  };

  /** Changes the page. Where that makes entries they are written, and shown once they are. */
  readonly change = (how: (page: Page) => Page): void => {
    const before = this.#page;
    const page = how(before);
    const kind = changeOf(before.log, page.log);
    const enters = kind !== "none" && page.log.length > 0;
    if (enters && before.log !== this.#seen && !namesOnly(before.log, page.log)) return;
    if (kind === "more" && this.#keeping.follows) return;
    this.#page = { ...page, notice: page.notice ?? this.#amiss };
    if (kind === "another") this.#anew();
    if (enters) this.#write(before.view);
    this.#goOn();
    this.#mark(before);
  };

  /** Goes on with a session that was kept. */
  readonly open = (kept: Kept, page: (page: Page) => Page): void => {
    this.#take(kept, page(this.#page));
    this.#disk.soon(() =>
      this.#store.mark(kept.session, ({ deleted: _, ...card }) => ({
        ...card,
        opened: this.#now(),
      })),
    );
  };

  /** Writes from now on, where another tab did. */
  readonly takeOver = (): void => this.#turn.take();

  #found({ kept, unread, trouble }: Reading): void {
    const notice = noticeOf(unread, kept !== undefined, trouble);
    const begun = this.#page.log.length > 0;
    if (!begun) this.#page = { ...this.#page, notice: notice ?? this.#page.notice };
    if (kept !== undefined && !begun) this.#take(kept, this.#page);
    else this.#reveal();
  }

  #take({ session, log, seed, position, next }: Kept, page: Page): void {
    const kept = next === 0 ? 0 : log.length;
    const lies: Written = { session, seed, log, kept, next, from: page.view };
    this.#written = this.#unwritten.of(session) ?? lies;
    this.#page = { ...page, log: this.#written.log, seed, notice: page.notice ?? this.#amiss };
    const keeping: Omit<Keeping, "kept"> = { session, follows: false };
    this.#keeping = holding(keeping, { position });
    this.#goOn();
  }

  /** Another session, or none. */
  #anew(): void {
    const { log, seed, view } = this.#page;
    const left = this.#written;
    this.#written = undefined;
    if (log.length > 0) {
      if (seed === undefined) this.#store.persist();
      const session = this.#store.name();
      this.#written = { session, seed, log: [], kept: 0, next: 0, from: view };
    } else if (left !== undefined) {
      this.#unwritten.drop(left);
      this.#disk.soon(() => this.#store.mark(left.session, (card) => ({ ...card, opened: 0 })));
    }
    this.#keeping = { session: this.#written?.session, follows: false };
  }

  #write(from: View): void {
    const one = this.#written;
    if (one === undefined) return;
    this.#unwritten.add(one, this.#page.log, from);
    const late = () => {
      this.#amiss = "late";
      this.#page = { ...this.#page, notice: "late" };
      this.#reveal();
    };
    const write = async () => {
      if (this.#unwritten.isEmpty) return; // it went with the one before, or gave way with it
      this.#wrote(await this.#unwritten.settle(one, this.#turn.mayWrite(one.session)));
    };
    this.#disk.awaited(write, () => this.#goOn(), late);
  }

  #wrote(troubles: readonly Trouble[]): void {
    this.#amiss = standing(troubles);
    this.#page = { ...this.#page, notice: noticeAfter(troubles, this.#page.notice) };
  }

  /** Another tab wrote to the session in hand: the press is to be made again, where it was made. */
  #gaveWay(one: Written): void {
    if (one !== this.#written) return;
    const view = isOf(this.#page.view) ? one.from : this.#page.view;
    this.#page = { ...this.#page, log: one.log, view };
  }

  /** What another tab has written meanwhile. What is not on the disk yet comes after it is written. */
  async #readOn(): Promise<void> {
    const one = this.#written;
    if (one === undefined || !(await readOn(this.#store, one)) || one !== this.#written) return;
    this.#page = { ...this.#page, log: one.log };
    this.#reveal();
  }

  #goOn(): void {
    this.#reveal();
    this.#wish(this.#wanted());
  }

  /** Shows the page, unless it has an entry that is about to be on the disk. */
  #reveal(): void {
    if (this.#disk.waits) return;
    this.#seen = this.#page.log;
    this.#show(this.shown);
  }

  /** The session that is to be written here: on the screens that are of one, and until all of it is on the disk. */
  #wanted(): string | undefined {
    const { session } = this.#keeping;
    const wanted = isOf(this.#page.view) || this.#unwritten.of(session) !== undefined;
    return wanted ? session : undefined;
  }

  /** Wishes to write a session; the one before is let go after what was about to be written of it. */
  #wish(session: string | undefined): void {
    if (!this.#turn.wish(session)) return;
    this.#disk.soon(async () => {
      if (!this.#turn.settle()) return;
      this.#seat(false);
      await this.#turn.answered;
    });
  }

  #seat(follows: boolean): void {
    if (follows === this.#keeping.follows) return;
    this.#keeping = { ...this.#keeping, follows };
    this.#reveal();
  }

  /** Notes which position is in hand, to come back to. */
  #mark(before: Page): void {
    const { session, follows } = this.#keeping;
    const hand = before.view === this.#page.view ? undefined : inHand(this.#page.view);
    if (session === undefined || follows || hand === undefined) return;
    this.#keeping = holding(this.#keeping, hand);
    this.#disk.soon(() => this.#store.mark(session, (card) => holding(card, hand)));
  }
}

import type { onTheDisk, Written } from "./disk.ts";

type Disk = Awaited<ReturnType<typeof onTheDisk>>;

/** What was on the disk when it was looked at last. */
export interface Known {
  readonly disk: Disk;
  /** The session that was begun last. */
  readonly session: string | undefined;
  /** How many entries it has. */
  readonly entries: number;
}

/** The one press that was made since. */
export interface Press {
  /** It began a session. */
  readonly anew: boolean;
  /** Where, as it is told. */
  readonly place: string;
  /** The screen had shown that it was taken. */
  readonly acknowledged: boolean;
}

export const nothingKnown: Known = { disk: {}, session: undefined, entries: 0 };

/** What is wrong with the disk after one press, where it is known what was there before. */
export function seen(known: Known, press: Press | undefined, disk: Disk) {
  const names = Object.keys(disk).sort((a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10));
  const session = names.at(-1);
  const now = session === undefined ? [] : (disk[session] ?? []);
  const more = total(disk) - total(known.disk);
  const wrong = [
    ...Object.keys(known.disk).flatMap((name) => changed(name, known.disk[name] ?? [], disk[name])),
    ...names.flatMap((name) => disordered(name, disk[name] ?? [])),
    ...amiss(press, more, now.length),
  ];
  const early = press !== undefined && !press.acknowledged && more === 1 ? 1 : 0;
  return { wrong, early, known: { disk, session, entries: now.length } satisfies Known };
}

/** What one press, or none, must not have made. */
function amiss(press: Press | undefined, more: number, now: number): readonly string[] {
  if (press?.acknowledged && more < 1) return [`lost: what the screen had shown, ${press.place}`];
  if (more > (press === undefined ? 0 : 1)) return [`doubled: ${more} entries of one press`];
  return press?.anew && more === 1 && now !== 1 ? ["a new session has another's entry"] : [];
}

const total = (disk: Disk): number =>
  Object.values(disk).reduce((sum, entries) => sum + entries.length, 0);

/** Nothing that was written is ever written again. */
function changed(
  name: string,
  before: readonly Written[],
  after: readonly Written[] | undefined,
): readonly string[] {
  const same = JSON.stringify(after?.slice(0, before.length)) === JSON.stringify(before);
  return same ? [] : [`${name}: what was there is another now`];
}

/** Places and ids count up from the first, and each entry has seen the one before it. */
function disordered(name: string, entries: readonly Written[]): readonly string[] {
  const right = entries.every(
    ({ place, entry }, index) =>
      place === index &&
      entry.id === String(index + 1) &&
      entry.seen === (index === 0 ? undefined : String(index)) &&
      (entry.entry === "drawing") === (index === 0),
  );
  return right ? [] : [`${name}: out of order: ${JSON.stringify(entries)}`];
}

import { deleteDB } from "idb";
import { type Random, seeded } from "#core/units/random.ts";
import { createDatabase } from "#storage/database.ts";
import type { Going, Stepped } from "./round-worker.ts";

/*
 * Whatever writes is killed in the middle of a round, again and again: after any step that was shown, or some milliseconds into the next. What kills whole
 * pages and browsers takes a hundred times as long.
 */

const ready = (worker: Worker) =>
  new Promise<Worker>((resolve) =>
    worker.addEventListener("message", () => resolve(worker), { once: true }),
  );
const born = () =>
  ready(new Worker(new URL("./round-worker.ts", import.meta.url), { type: "module" }));

/** What a worker told before its end has come by then, milliseconds. */
const underWay = 20;

/**
 * Lets a worker go on until so many steps were shown and so many milliseconds more, and kills it; the steps that were shown. They come by a channel of
 * their own: what a worker told by itself and is still under way is dropped when it is killed.
 */
function killed(worker: Worker, going: Going, steps: number, late: number) {
  return new Promise<readonly Stepped[]>((resolve) => {
    const shown: Stepped[] = [];
    const { port1: here, port2: there } = new MessageChannel();
    const end = () =>
      setTimeout(() => {
        worker.terminate();
        setTimeout(() => {
          here.close();
          resolve(shown);
        }, underWay);
      }, late);
    here.addEventListener("message", ({ data }: MessageEvent<Stepped>) => {
      shown.push(data);
      if (shown.length === steps) end();
    });
    here.start();
    worker.postMessage(going, [there]);
    if (steps === 0) end();
  });
}

/** All sessions on the disk, each entry as text. */
async function disk(name: string): Promise<Disk> {
  const shelf = createDatabase(name);
  const cards = await shelf.cards();
  if ("trouble" in cards) throw new Error(cards.trouble);
  return new Map(
    await Promise.all(
      cards.value.map(async ({ session }) => {
        const read = await shelf.read(session, 0);
        if ("trouble" in read) throw new Error(read.trouble);
        return [session, read.value.entries.map(textOf)] as const;
      }),
    ),
  );
}

const isPrefix = (short: readonly string[], all: readonly string[]): boolean =>
  short.every((entry, at) => all[at] === entry);

/** An entry as text, whatever order its fields have: what was read back may have another. */
const textOf = (entry: unknown): string =>
  JSON.stringify(entry, (_, value: unknown) =>
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
const texts = ({ log }: Stepped): readonly string[] =>
  (JSON.parse(log) as readonly unknown[]).map(textOf);

type Disk = ReadonlyMap<string, readonly string[]>;

/** What is lost of what was there before, or was shown since. */
const lostIn = (before: Disk, shown: readonly Stepped[], after: Disk): readonly string[] => [
  ...[...before].flatMap(([session, entries]) =>
    isPrefix(entries, after.get(session) ?? []) ? [] : [`${session}: lost or changed`],
  ),
  ...shown.flatMap((one) =>
    one.session === "" || !one.kept || isPrefix(texts(one), after.get(one.session) ?? [])
      ? []
      : [`${one.session}, ${one.step}: shown and lost`],
  ),
];

/** What is there twice, or that nobody pressed. */
function doubledIn(before: Disk, shown: readonly Stepped[], after: Disk): readonly string[] {
  const known = new Map([...before].map(([session, { length }]) => [session, length]));
  for (const one of shown) known.set(one.session, texts(one).length);
  return [...after].flatMap(([session, entries]) => {
    const ids = new Set(entries.map((entry) => (JSON.parse(entry) as { id: string }).id));
    return [
      ...(ids.size < entries.length ? [`${session}: doubled`] : []),
      ...(entries.length > (known.get(session) ?? 0) + 1
        ? [`${session}: more than anybody pressed`]
        : []),
    ];
  });
}

/** What became of a number of kills. */
export interface Counts {
  /** How often each step was shown. */
  readonly steps: Record<string, number>;
  /** Everything that was not as it must be. */
  readonly wrong: string[];
  /** A step that nobody was shown was on the disk all the same. */
  early: number;
}

async function lane(
  database: string,
  random: Random,
  kills: number,
  counts: Counts,
): Promise<void> {
  let before = await disk(database);
  let next = born();
  for (let kill = 0; kill < kills; kill += 1) {
    const worker = await next;
    next = born();
    const going = { database, seed: 1 + Math.floor(1e6 * random()) };
    const shown = await killed(worker, going, Math.floor(4 * random()), 14 * random() ** 2);
    const after = await disk(database);
    counts.wrong.push(...lostIn(before, shown, after), ...doubledIn(before, shown, after));
    for (const { step } of shown) counts.steps[step] = (counts.steps[step] ?? 0) + 1;
    const last = shown.at(-1);
    if (last && (after.get(last.session)?.length ?? 0) > texts(last).length) counts.early += 1;
    before = after;
  }
  (await next).terminate();
}

/** Kills so many workers in each of some rows, each row with a database of its own. */
async function killing(rows: number, kills: number): Promise<Counts> {
  const counts: Counts = { steps: {}, wrong: [], early: 0 };
  const names = Array.from({ length: rows }, (_, row) => `leftwright killed ${row}`);
  await Promise.all(names.map((name, row) => lane(name, seeded(11 + row), kills, counts)));
  await Promise.all(names.map((name) => deleteDB(name)));
  return counts;
}

Object.assign(globalThis, { killing });

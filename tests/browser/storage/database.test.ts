import { deleteDB } from "idb";
import { afterEach, describe, expect, test, vi } from "vitest";
import { straightIn } from "#core/rig/rigs.ts";
import { add, type Log } from "#core/session/log.ts";
import { createDatabase } from "#storage/database.ts";
import type { Adding } from "#storage/shelf.ts";
import { createTurns } from "#storage/turns.ts";

/** Every engine's own database, locks and channel. */
const name = "leftwright test";
afterEach(() => deleteDB(name));

const position = "position 1";
const grown = (log: Log, entries: number): Log =>
  Array.from({ length: entries }).reduce<Log>(
    (so) => add(so, { entry: "absent", position }, so.length),
    log,
  );
const drawn = add([], { entry: "drawing", rig: straightIn }, 0);
const adding = (session: string, whole: Log, place = 0): Adding => ({
  session,
  place,
  entries: whole.slice(place),
  whole,
  at: 7,
});

describe("the browser's database", () => {
  test("gives back what was written, entry by entry, after it was opened anew", async () => {
    const log = grown(drawn, 30);
    const first = createDatabase(name);
    for (let place = 0; place < log.length; place += 1)
      expect(await first.add(adding("a", log.slice(0, place + 1), place))).toEqual({
        value: place + 1,
      });
    const again = createDatabase(name);
    expect(await again.read("a", 0)).toEqual({ value: { entries: log, next: log.length } });
    expect(await again.read("a", 29)).toEqual({
      value: { entries: log.slice(29), next: log.length },
    });
    expect(await again.cards()).toEqual({ value: [{ session: "a", opened: 7 }] });
  });

  test("lets no place be written twice, whoever comes first", async () => {
    const shelves = [createDatabase(name), createDatabase(name), createDatabase(name)];
    await shelves[0]?.add(adding("a", drawn));
    const log = grown(drawn, 1);
    const told = await Promise.all(shelves.map((shelf) => shelf.add(adding("a", log, 1))));
    expect(told.filter((one) => "value" in one)).toEqual([{ value: 2 }]);
    expect(told.filter((one) => "trouble" in one)).toEqual([
      { trouble: "taken" },
      { trouble: "taken" },
    ]);
    expect(await shelves[0]?.read("a", 0)).toEqual({ value: { entries: log, next: 2 } });
  });

  test("writes all of a press or none of it", async () => {
    const shelf = createDatabase(name);
    const broken = { ...drawn[0], at: () => 0 } as unknown as Log[number];
    const log = [...grown(drawn, 2), broken];
    expect(await shelf.add(adding("a", log))).toEqual({ trouble: "failed" });
    expect(await shelf.read("a", 0)).toEqual({ value: { entries: [], next: 0 } });
    expect(await shelf.cards()).toEqual({ value: [] });
  });

  test("keeps the number of the bench apart, and notes what is not of the log", async () => {
    const shelf = createDatabase(name);
    await shelf.add({ ...adding("a", drawn), seed: 90210 });
    expect(await shelf.seed("a")).toEqual({ value: 90210 });
    expect(JSON.stringify(await shelf.read("a", 0))).not.toContain("90210");
    await shelf.mark("a", (card) => ({ ...card, position }));
    await shelf.mark("b", (card) => ({ ...card, position }));
    expect(await shelf.cards()).toEqual({ value: [{ session: "a", opened: 7, position }] });
  });

  test("clears away what was deleted long ago, and nothing else", async () => {
    const shelf = createDatabase(name);
    for (const session of ["a", "b", "c"]) await shelf.add(adding(session, drawn));
    await shelf.mark("a", (card) => ({ ...card, deleted: 10 }));
    await shelf.mark("b", (card) => ({ ...card, deleted: 30 }));
    await shelf.clear(20);
    const cards = await shelf.cards();
    expect("value" in cards && cards.value.map(({ session }) => session)).toEqual(["b", "c"]);
    expect(await shelf.read("a", 0)).toEqual({ value: { entries: [], next: 0 } });
    expect(await shelf.read("b", 0)).toMatchObject({ value: { next: 1 } });
  });

  test("writes a session that was cleared away as a whole", async () => {
    const log = grown(drawn, 3);
    const shelf = createDatabase(name);
    expect(await shelf.add(adding("a", log, 2))).toEqual({ value: 4 });
    expect(await shelf.read("a", 0)).toEqual({ value: { entries: log, next: 4 } });
  });

  test("keeps a session that is deleted in one tab and gone on with in another", async () => {
    const shelf = createDatabase(name);
    await shelf.add(adding("a", drawn));
    await shelf.mark("a", (card) => ({ ...card, position, deleted: 10 }));
    const log = grown(drawn, 1);
    expect(await createDatabase(name).add(adding("a", log, 1))).toEqual({ value: 2 });
    await shelf.clear(20);
    expect(await shelf.cards()).toEqual({ value: [{ session: "a", opened: 7, position }] });
    expect(await shelf.read("a", 0)).toEqual({ value: { entries: log, next: 2 } });
  });

  test("does not count what came from a file as in hand", async () => {
    const shelf = createDatabase(name);
    await shelf.add({ ...adding("a", drawn), aside: true });
    expect(await shelf.cards()).toEqual({ value: [{ session: "a", opened: 0 }] });
  });

  test.each(["InvalidStateError", "UnknownError", "AbortError"])(
    "is opened once more where it fails with %s",
    async (error) => {
      const shelf = createDatabase(name);
      await shelf.add(adding("a", drawn));
      const broken = vi.spyOn(IDBDatabase.prototype, "transaction").mockImplementationOnce(() => {
        throw new DOMException("the connection was lost", error);
      });
      try {
        expect(await shelf.add(adding("a", grown(drawn, 1), 1))).toEqual({ value: 2 });
      } finally {
        broken.mockRestore();
      }
    },
  );

  test("that a newer program made is not touched", async () => {
    await new Promise((resolve) => {
      const opening = indexedDB.open(name, 99);
      opening.onsuccess = () => {
        opening.result.close();
        resolve(undefined);
      };
    });
    expect(await createDatabase(name).add(adding("a", drawn))).toEqual({ trouble: "newer" });
  });
});

/** What a claim was told, and a way to wait for what it is told next. */
function told() {
  const said: boolean[] = [];
  return { said, tell: (mine: boolean) => void said.push(mine) };
}

describe("the browser's locks and channel", () => {
  test("one writes, the next when it gives way, and whoever takes it before", async () => {
    const [one, two, three] = [told(), told(), told()];
    const first = createTurns().claim("s", one.tell);
    await expect.poll(() => one.said).toEqual([true]);
    const second = createTurns().claim("s", two.tell);
    await expect.poll(() => two.said).toEqual([false]);
    first.give();
    await expect.poll(() => two.said).toEqual([false, true]);
    const third = createTurns().claim("s", three.tell);
    await expect.poll(() => three.said).toEqual([false]);
    third.take();
    await expect.poll(() => three.said).toEqual([false, true]);
    await expect.poll(() => two.said).toEqual([false, true, false]);
    third.give();
    await expect.poll(() => two.said).toEqual([false, true, false, true]);
    second.give();
    expect(one.said).toEqual([true]);
  });

  test("sessions do not stand in each other's way", async () => {
    const [one, two] = [told(), told()];
    const turns = createTurns();
    const claims = [turns.claim("a", one.tell), turns.claim("b", two.tell)];
    await expect.poll(() => [...one.said, ...two.said]).toEqual([true, true]);
    for (const claim of claims) claim.give();
  });

  test("what one writes the others hear, and not itself", async () => {
    const heard: string[] = [];
    const [one, two] = [createTurns(), createTurns()];
    const stop = [
      one.hear((session) => heard.push(`one ${session}`)),
      two.hear((session) => heard.push(`two ${session}`)),
    ];
    one.tell("a");
    await expect.poll(() => heard).toEqual(["two a"]);
    for (const end of stop) end();
  });
});

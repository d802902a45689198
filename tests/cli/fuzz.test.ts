import fc from "fast-check";
import { afterAll, expect, test } from "vitest";
import type { Printed } from "#cli/print.ts";
import { run } from "#cli/run.ts";
import { straightIn } from "#core/index.ts";
import { broken } from "./broken.ts";
import { type Anything, diagnose, folder, threeAtATime } from "./command.ts";

const files = folder();
afterAll(files.remove);

const asked = (check: string) => ({ check, position: "position 1" });
const found = (of: object, rest: object) => ({ entry: "finding", finding: { asked: of, ...rest } });

/** A small case with every kind of finding and most moves. */
const whole = {
  format: "leftwright case",
  version: 1,
  rig: {
    ...straightIn,
    parts: straightIn.parts.map((part) => ({ ...part, controls: {}, good: false })),
  },
  log: [
    found(asked("complaint"), { results: [["no voice"]] }),
    found(asked("left"), { results: [["left ear"]], otherTimes: [["nothing"]] }),
    found({ check: "look", place: "headphones 1" }, { results: [["as it should be"]] }),
    found(
      { check: "twist", part: "headphones 1", plug: "plug" },
      { results: [["nothing changes"]] },
    ),
    found(
      { check: "continuity", part: "headphones 1", from: "plug.tip", to: "plug.sleeve" },
      { ohms: 32 },
    ),
    found(
      { ...asked("matrix") },
      {
        gains: [
          [1, 0],
          [0, 0],
          [0, 0],
          [1, 0],
        ],
        error: 0.05,
      },
    ),
    { entry: "move", move: { move: "turned round", position: "position 1" } },
    { entry: "move", move: { move: "known good in", part: "headphones 1" } },
    {
      entry: "cannot",
      move: { move: "plugged anew", part: "known good headphones 1", plug: "plug" },
    },
    { entry: "move", move: { move: "put back", part: "headphones 1" } },
    {
      entry: "move",
      move: { move: "set", part: "laptop", control: "mono", value: 1 },
      id: "m",
      at: 5,
    },
    { entry: "taken back", taken: "m", seen: "9" },
    { entry: "move", move: { move: "replaced", place: "headphones 1" } },
    found(asked("pair"), { results: [["middle"], ["all round"]] }),
  ],
};

/** Every place in a value. */
const placesIn = (value: Anything): readonly (readonly string[])[] =>
  typeof value === "object" && value !== null
    ? Object.entries(value).flatMap(([key, inside]) => [
        [key],
        ...placesIn(inside).map((rest) => [key, ...rest]),
      ])
    : [];
const places = placesIn(whole);
const at = (value: Anything, place: readonly string[]): Anything =>
  place.reduce((inside, key) => inside?.[key], value);

/** What may stand at a place instead: anything, or what stands at another. */
const instead = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom(...places).map((place) => at(whole, place)),
  fc.constantFrom(
    "__proto__",
    "constructor",
    "toString",
    "",
    "known good headphones 1",
    -1,
    1e300,
    0.5,
  ),
);

interface Change {
  readonly place: readonly string[];
  readonly how: "put" | "leave out" | "add" | "double";
  readonly value: unknown;
  readonly key: string;
}

const changes: fc.Arbitrary<Change> = fc.record({
  place: fc.constantFrom(...places),
  how: fc.constantFrom("put", "leave out", "add", "double"),
  value: instead,
  key: fc.oneof(
    fc.string(),
    fc.constantFrom("__proto__", "controls", "good", "turned", "id", "seen", "results", "ohms"),
  ),
});

const isOpen = (value: unknown): value is object => typeof value === "object" && value !== null;

const changing: Readonly<
  Record<Change["how"], (around: Anything, last: string, change: Change) => void>
> = {
  put: (around, last, { value }) => {
    around[last] = value;
  },
  "leave out": (around, last) => {
    if (Array.isArray(around)) around.splice(Number(last), 1);
    else delete around[last];
  },
  add: (around, last, { key, value }) => {
    const own = { value, enumerable: true, configurable: true, writable: true };
    if (isOpen(around[last])) Object.defineProperty(around[last], key, own);
  },
  double: (around, last) => {
    if (Array.isArray(around)) around.splice(Number(last), 0, around[Number(last)]);
  },
};

function change(one: Anything, by: Change): void {
  const around = at(one, by.place.slice(0, -1));
  const last = by.place.at(-1) ?? "";
  if (isOpen(around) && Object.hasOwn(around, last)) changing[by.how](around, last, by);
}

const texts = fc.array(changes, { minLength: 1, maxLength: 3 }).map((all) => {
  const one = structuredClone(whole);
  for (const each of all) change(one, each);
  return JSON.stringify(one);
});
const mutated = fc.oneof({ weight: 4, arbitrary: texts }, { weight: 1, arbitrary: broken(texts) });

const isSound = ({ code, out, err }: Omit<Printed, "code"> & { readonly code: number }): void => {
  expect([0, 2]).toContain(code);
  expect(out === "").toBe(code === 2);
  expect(err === "").toBe(code === 0 && !err.includes("warning"));
  if (code === 0) JSON.parse(out);
  expect(err).not.toMatch(/^\s+at |this program failed|worked out/m);
  expect(err).toMatch(/^(?:(?:\/|the case|line ).*: .*\n)*$/);
};

test("a changed case is read, or refused in words", async () => {
  expect((await run(["-"], async () => ({ text: JSON.stringify(whole) }))).code).toBe(0);
  const ends = { 0: 0, 2: 0 };
  await fc.assert(
    fc.asyncProperty(mutated, async (text) => {
      const ran = await run(["-"], async () => ({ text }));
      isSound(ran);
      ends[ran.code]++;
    }),
    { numRuns: 100 },
  );
  expect(Math.min(ends[0], ends[2])).toBeGreaterThan(5);
}, 60_000);

test("the same in processes of their own", async () => {
  const some = fc.sample(mutated, 4).map((text, index) => files.write(`${index}.json`, text));
  for (const ended of await threeAtATime(some, (file) => diagnose([file]))) isSound(ended);
}, 60_000);

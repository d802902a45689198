import type { Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { everyOther, long } from "#tests/support/long.ts";
import { type BuiltPage, openBuiltPage } from "./built-page.ts";
import { type Case, casesOfEveryKind, kindOf, kinds, model, namedBy, rig } from "./cases.ts";
import type { Recording } from "./ears.ts";
import { mend, walk } from "./robot.ts";
import { prepare } from "./tap.ts";

let built: BuiltPage;
beforeAll(async () => {
  built = await openBuiltPage();
});
afterAll(() => built.close());

/** Of a test, milliseconds: others may have the pages first. */
const timeout = 900_000;
/** So many pages keep time at once, of all tests together. */
let free = 8;
const waiting: (() => void)[] = [];

/** Runs when a page is free. */
async function onOnePage(go: (page: Page) => Promise<void>): Promise<void> {
  if (free > 0) free--;
  else await new Promise<void>((resolve) => waiting.push(resolve));
  const context = await built.browser.newContext({
    viewport: { width: 900, height: 700 },
    reducedMotion: "reduce",
  });
  try {
    const page = await context.newPage();
    await prepare(page);
    await go(page);
  } finally {
    await context.close();
    const next = waiting.shift();
    if (next) next();
    else free++;
  }
}

/** Walks cases, each on the next page that is free. */
const walkAll = <One>(cases: readonly One[], go: (page: Page, one: One) => Promise<void>) =>
  Promise.all(cases.map((one) => onOnePage((page) => go(page, one))));

describe.concurrent("a simulated person at the built page", () => {
  test("finds faults of every kind on real sound", { timeout }, async () => {
    const every = casesOfEveryKind();
    expect(new Set(every.map(({ fault }) => kindOf(fault)))).toEqual(kinds);
    const cases = everyOther(every, 40); // it keeps real time
    const rows: string[] = [];
    const results: {
      readonly found: boolean;
      readonly said: boolean;
      readonly one: Case;
      readonly checks: number;
    }[] = [];
    const start = Date.now();
    await walkAll(cases, async (page, one) => {
      const walked = await walk(page, {
        url: built.url,
        rig: one.seed,
        position: one.position,
      });
      const { named, said, sure } = namedBy(walked, one);
      results.push({ found: named, said, one, checks: walked.checks + walked.moves });
      rows.push(
        `${one.fault.id.padEnd(56)} ${String(one.group.faults.length).padStart(2)} ${String(walked.checks).padStart(3)} ${String(walked.moves).padStart(2)}  ${named ? "" : "MISSED: "}${walked.cured ? "mended" : walked.heading}${said ? "" : ", not named"} ${sure}`,
      );
    });
    const seconds = (Date.now() - start) / 1000;
    const weight = results.reduce((sum, { one }) => sum + one.fault.weight, 0);
    const found = results.filter((one) => one.found);
    const byWeight = found.reduce((sum, { one }) => sum + one.fault.weight, 0) / weight;
    console.log(
      `fault, its group's size, checks, moves, verdict, how sure\n${rows.sort().join("\n")}`,
    );
    const checks = results.reduce((sum, { one, checks }) => sum + one.fault.weight * checks, 0);
    console.log(
      `${(checks / weight).toFixed(1)} checks and moves on average by weight; ${found.length} of ${results.length} kinds found or mended, ${(100 * byWeight).toFixed(1)} % by weight, ${results.filter(({ said }) => said).length} named, in ${seconds.toFixed(0)} s`,
    );
    expect(byWeight).toBeGreaterThanOrEqual(0.98);
    expect(found.length / results.length).toBeGreaterThanOrEqual(0.9);
  });

  test("calls a rig healthy that is, in three checks a position", { timeout }, async () => {
    const seats = everyOther(model.rig.positions, 2).map(({ name }) => name);
    const checks: number[] = [];
    await walkAll(seats, async (page, position) => {
      const walked = await walk(page, { url: built.url, rig: rig.name, position });
      expect(walked.end, walked.text).toBe("healthy");
      checks.push(walked.checks);
    });
    console.log(`healthy positions: ${checks.join(", ")} checks`);
    expect(checks.reduce((sum, one) => sum + one, 0) / checks.length).toBeLessThanOrEqual(3.3);
  });

  test("mends what was named: 20 dB lower, and healthy afterwards", { timeout }, async () => {
    const some = casesOfEveryKind().filter(({ fault }) =>
      /sides exchanged|headphones . .*sleeve open/.test(fault.id),
    );
    expect(some.length).toBe(2);
    await walkAll(some, async (page, one) => {
      const person = { url: built.url, rig: one.seed, position: one.position, refuses: true };
      expect(namedBy(await walk(page, person), one).named).toBe(true);
      const mended = await mend(page, person);
      console.log(`${one.fault.id}: mended, ${mended.checks} checks, ${mended.heading}`);
      expect(20 * Math.log10(mended.normal)).toBeCloseTo(-70, 5);
      expect(mended.end, mended.text).toBe("healthy");
    });
  });

  const people: Readonly<Record<string, (position: string) => boolean>> = {
    "1 host takes left for right": (position) => position === "1 host",
    "Whoever writes the answers down takes left for right": () => true,
  };

  test.for(Object.entries(people))("finds that %s", { timeout }, async ([text, mirrors]) => {
    await walkAll([0], async (page) => {
      const walked = await walk(page, {
        url: built.url,
        rig: rig.name,
        position: "1 host",
        mirrors,
      });
      console.log(
        `${text}: ${walked.checks} checks, ${walked.heading} ${walked.text.match(/(\d+) in 100/)?.[0]}`,
      );
      expect(walked.end).toBe("verdict");
      expect(walked.text.toLowerCase()).toContain(text.toLowerCase());
    });
  });

  const mono = (recording: Recording): Recording => {
    const sum = recording.left.map((sample, at) => (sample + (recording.right[at] ?? 0)) / 2);
    return { ...recording, left: sum, right: sum };
  };
  const controls: Readonly<Record<string, (recording: Recording) => Recording>> = {
    "a deaf person": (recording) => ({
      ...recording,
      left: recording.left.map(() => 0),
      right: recording.right.map(() => 0),
    }),
    "a person with the ears exchanged": ({ left, right, rate }) => ({
      left: right,
      right: left,
      rate,
    }),
    "a page whose output is cut to mono": mono,
  };

  test.for(Object.entries(controls))("control: %s must fail", { timeout }, async ([, spoilt]) => {
    const some = casesOfEveryKind()
      .filter(({ fault }) =>
        /tip open|driver dead|both on the tip|sides exchanged|channel down|hard right/.test(
          fault.name,
        ),
      )
      .slice(0, long ? 2 : 1);
    const named: boolean[] = [];
    await walkAll(some, async (page, one) => {
      const walked = await walk(page, {
        url: built.url,
        rig: one.seed,
        position: one.position,
        spoilt,
      });
      named.push(namedBy(walked, one).named);
    });
    expect(named.length).toBe(some.length);
    // What is asked of the healthy person: nine in ten.
    expect(named.filter(Boolean).length / named.length).toBeLessThan(0.9);
  });
});

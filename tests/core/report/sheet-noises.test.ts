import { describe, expect, test } from "vitest";
import { diagnosisOf } from "#cli/diagnosis-result.ts";
import { type NoiseAnswer, noises, type Trial } from "#core/checks/noise.ts";
import { neverTestedAt } from "#core/report/never-tested.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { askedIn, huntIn } from "#core/session/noises.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { derived, empty } from "#tests/support/entries.ts";
import { noticed, torn } from "#tests/support/sessions.ts";

const at = "position 1";
const grown = (log: Log, ...said: readonly Said[]): Log =>
  said.reduce<Log>((so, one, which) => add(so, one, 10 * (which + 1)), log);
const knob: Trial = { try: "knob down", part: "amplifier", socket: "output 1" };
const hiss = (...given: readonly NoiseAnswer[]) => noticed(at, "hiss", knob, ...given);
const bent = noticed(at, "crackle", { try: "lead bent", part: "headphones 1" }, "it goes with it");
const replaced: Said = { entry: "move", move: { move: "replaced", place: "headphones 1" } };

const huntedIn = (log: Log) => sheetOf(log)?.hunted ?? [];
/** What is said last of all that was not tested: the noises. */
const untested = (log: Log, positions: readonly string[] = [], language = english) => {
  const { seats, asked } = sheetOf(log) ?? { seats: [], asked: [] };
  const some = seats.filter(({ id }) => positions.length === 0 || positions.includes(id));
  return neverTestedAt(language, some, asked).filter((one) => !language.neverTested.includes(one));
};
const all = "hiss, hum, crackle and distortion";

test("nobody asked: nothing is said of noises but that none was tested", () => {
  expect(huntedIn(empty)).toEqual([]);
  expect(untested(empty)).toEqual([all]);
  expect(untested(empty, [], german)).toEqual(["Rauschen, Brummen, Knistern und Verzerrung"]);
  expect(diagnosisOf(derived(empty), [at]).neverTested).toContain(all);
});

test("one that was looked for stands with where it comes in, as the hunt has it", () => {
  const log = grown(empty, hiss("the same"));
  const [first] = huntIn(derived(log), at, "hiss")?.suspects ?? [];
  expect(huntedIn(log)).toEqual([
    {
      position: at,
      noise: "hiss",
      from: { cause: first?.causes[0], alike: 0, probability: first?.probability, sure: true },
      at: 10,
      since: [],
      again: false,
    },
  ]);
});

describe("under 'not tested'", () => {
  const log = grown(empty, hiss("the same"));

  test("it stands for the other positions alone, and of its own it is gone", () => {
    expect(untested(log)).toEqual(["hum, crackle and distortion; hiss, except at 1 host"]);
    expect(untested(log, [], german)[0]).toContain("Rauschen, außer bei: 1 host");
    expect(untested(log, [at])).toEqual(["hum, crackle and distortion"]);
    expect(untested(log, ["position 2"])).toEqual([all]);
    expect(diagnosisOf(derived(log), [at]).neverTested).toContain("hum, crackle and distortion");
  });

  test("all of them looked for, nothing is said", () => {
    const each = noises.map((noise) => noticed(at, noise, { try: "other headphones" }, "less"));
    expect(untested(grown(empty, ...each), [at])).toEqual([]);
  });

  test("'can't tell' and what cannot be tried test nothing", () => {
    const log = grown(empty, hiss("gone", "less", "the same", "more"), hiss());
    expect(askedIn(derived(log))).toEqual([]);
    expect(untested(log)).toEqual([all]);
    expect(huntedIn(log)).toMatchObject([{ noise: "hiss", from: undefined }]);
  });
});

describe("once a hand was on the way", () => {
  test("what was found is kept with what was done, and the noise is not tested any more", () => {
    const log = grown(empty, ...torn(at), replaced);
    expect(huntedIn(log)).toMatchObject([
      {
        from: { cause: { cause: "driver torn", part: "headphones 1" } },
        since: [replaced.move],
        again: false,
      },
    ]);
    expect(untested(log)).toEqual([all]);
  });

  test("a move elsewhere changes nothing of it", () => {
    const elsewhere: Said = { entry: "move", move: { move: "replaced", place: "headphones 3" } };
    expect(huntedIn(grown(empty, ...torn(at), elsewhere))).toMatchObject([{ since: [] }]);
  });

  test("looked for again, both stand, each of the rig as it was then", () => {
    const exchanged: Said = {
      entry: "move",
      move: { move: "exchanged", parts: ["headphones 1", "headphones 2"] },
    };
    const log = grown(empty, ...torn(at), exchanged, ...torn(at));
    expect(huntedIn(log)).toMatchObject([
      { from: { cause: { part: "headphones 1" } }, since: [exchanged.move], again: true },
      { from: { cause: { part: "headphones 2" } }, since: [], again: false },
    ]);
    expect(untested(log)).toEqual(["hiss, hum and crackle; distortion, except at 1 host"]);
  });

  test("moves from before are none that came since", () => {
    const [one] = huntedIn(grown(empty, replaced, bent, replaced));
    expect(one?.since).toEqual([replaced.move]);
  });
});

test("complained of and not looked into, it says no more than that", () => {
  const complaint: Said = {
    entry: "finding",
    finding: { asked: { check: "complaint", position: at }, results: [["hum"]] },
  };
  const log = grown(empty, complaint);
  expect(huntedIn(log)).toMatchObject([{ position: at, noise: "hum", from: undefined }]);
  expect(untested(log)).toEqual([all]);
});

test("taken back, it was never looked for", () => {
  const log = grown(empty, hiss("the same"));
  const back = grown(log, { entry: "taken back", taken: log.at(-1)?.id ?? "" });
  expect(huntedIn(back)).toEqual([]);
  expect(untested(back)).toEqual([all]);
});

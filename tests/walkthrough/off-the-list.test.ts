import { expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Gains } from "#core/rig/effect.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import { seeded } from "#core/units/random.ts";
import { long } from "#tests/support/long.ts";
import { walk } from "./walk.ts";

const [rig] = builtInRigs;
if (rig === undefined) throw new Error("there is no built-in rig");

const straight: Gains = [1, 0, 0, 1];

/** What no fault on the list does: gains of the four ways, by the sound. Invented for this test. */
const plants: Readonly<Record<string, (signal: SignalName) => Gains>> = {
  "one side late: whatever is on both is pulled left": (signal) =>
    signal === "burst-pair" ? [1, 0, 0, 0] : straight,
  "one side late: whatever is on both is pulled right": (signal) =>
    signal === "burst-pair" ? [0, 0, 0, 1] : straight,
  "20 dB down and swapped": () => [0, 0.1, 0.1, 0],
  "left in the middle, right off to one side": () => [1, 0.4, 1, 1],
  "right in the middle, left off to one side": () => [1, 1, 0.4, 1],
  "right in the left ear and faint in the right, left dead": () => [0, 1, 0, 0.3],
  "left wide, right faint in the middle, both bursts wide": () => [1, 0.3, -1, 0.3],
  "left knocks missing, right ones in the middle, bursts as they should be": (signal) =>
    ({ "left-ident": [0, 0, 0, 0] as const, "right-ident": [0, 1, 0, 1] as const })[
      signal as string
    ] ?? straight,
  "left knocks on the right, all else as it should be": (signal) =>
    signal === "left-ident" ? [0, 0, 1, 0] : straight,
  "bursts missing, knocks as they should be": (signal) =>
    signal === "burst-pair" ? [0, 0, 0, 0] : straight,
};

test("a plant that is on no list ends in 'not on the list' or unsure, in 9 of 10", () => {
  const ends = Object.entries(plants).flatMap(([name, gains]) =>
    (long ? [1, 2, 3] : [1, 2]).map((seed) => {
      const random = seeded(seed);
      const walked = walk({ rig, planted: [], slips: 0, random, gains }, "position 1");
      const [first] = walked.derived.standing("position 1").suspects;
      const named = first?.group.faults[0];
      const honest =
        walked.end === "unsure" ||
        (walked.end === "sure" && named !== undefined && isUnlisted(named));
      console.log(
        `${name.padEnd(56)} ${honest ? "honest" : "WRONG "} ${walked.end}, ${walked.checks} checks, first: ${named?.id} ${((first?.probability ?? 0) * 100).toFixed(0)} %`,
      );
      return honest;
    }),
  );
  expect(ends.filter(Boolean).length / ends.length).toBeGreaterThanOrEqual(0.9);
}, 60_000);

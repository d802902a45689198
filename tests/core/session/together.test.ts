import { describe, expect, test } from "vitest";
import { sightOf } from "#core/checks/look.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { add, type Log } from "#core/session/log.ts";
import { at, chance, derived, empty, find } from "#tests/support/entries.ts";

const mixerMono = (fault: RigFault) => fault.part === "mixer" && fault.name === "mono";

describe("positions are judged together", () => {
  test("swapped everywhere points before the amplifier, or at who writes it down; touching a cup tells", () => {
    const swapped = ["position 1", "position 2"].reduce(
      (log, position) => at(at(log, position, "left", "right ear"), position, "right", "left ear"),
      empty,
    );
    const inTrunk = (log: Log) => {
      const { model, beliefs } = derived(log);
      const { faults, probabilities } = beliefs.sets(model.root);
      return faults.reduce(
        (sum, set, index) => sum + (set.length > 0 ? (probabilities[index] ?? 0) : 0),
        0,
      );
    };
    expect(inTrunk(swapped)).toBeGreaterThan(0.85);
    const mirrors = (fault: RigFault) => fault.part === "operator";
    const touchedL = at(swapped, "position 1", "cup", "cup marked L");
    const touchedR = at(swapped, "position 1", "cup", "cup marked R");
    expect(chance(touchedL, mirrors)).toBeGreaterThan(0.8);
    expect(chance(touchedR, mirrors)).toBeLessThan(0.1);
  });

  test("a look that shows a thing makes it all but sure, one that does not all but clears it", () => {
    const mono = find(find(empty, "left", "middle"), "right", "middle");
    const { model } = derived(mono);
    const fault = model.root.faults.find(mixerMono);
    if (fault === undefined) throw new Error("the mixer has no mono button");
    const look = (answer: string) =>
      add(
        mono,
        {
          entry: "finding",
          finding: { asked: { check: "look", place: "mixer" }, results: [[answer]] },
        },
        0,
      );
    expect(chance(look(sightOf(fault)), mixerMono)).toBeGreaterThan(0.95);
    expect(chance(look("as it should be"), mixerMono)).toBeLessThan(0.1);
  });

  test("a move elsewhere is no new hearing: the same answer after it is the same judgement", () => {
    const once = find(find(empty, "left", "middle"), "right", "middle");
    const elsewhere = add(
      once,
      { entry: "move", move: { move: "set right", place: "amplifier, output 4" } },
      0,
    );
    expect(chance(find(elsewhere, "left", "middle"), mixerMono)).toBeCloseTo(
      chance(find(once, "left", "middle"), mixerMono),
      9,
    );
    const looked = (log: Log) =>
      add(
        log,
        {
          entry: "finding",
          finding: { asked: { check: "look", place: "mixer" }, results: [["as it should be"]] },
        },
        0,
      );
    const moved = add(
      looked(once),
      { entry: "move", move: { move: "set right", place: "amplifier, output 4" } },
      0,
    );
    expect(chance(looked(moved), mixerMono)).toBeCloseTo(chance(looked(once), mixerMono), 9);
  });
});

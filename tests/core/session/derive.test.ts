import { describe, expect, test } from "vitest";
import { neighbour } from "#core/diagnosis/asking.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { derive } from "#core/session/derive.ts";
import { add, holding, type Log, lastToTake } from "#core/session/log.ts";
import { at, chance, derived, empty, find, well } from "#tests/support/entries.ts";

const lostReturn = (fault: RigFault) =>
  fault.part === "headphones 1" && fault.name === "sleeve open";
const mixerMono = (fault: RigFault) => fault.part === "mixer" && fault.name === "mono";

describe("a log", () => {
  test("is nothing without a drawing", () => {
    expect(derive([])).toBeUndefined();
  });

  test("taking back is another entry, and can be taken back itself", () => {
    const wrong = find(empty, "left", "nothing");
    const taken = add(wrong, { entry: "taken back", taken: wrong.at(-1)?.id ?? "" }, 0);
    expect(holding(taken)).toEqual(empty);
    expect(lastToTake(taken)).toBeUndefined();
    const again = add(taken, { entry: "taken back", taken: taken.at(-1)?.id ?? "" }, 0);
    expect(holding(again)).toEqual(wrong);
    expect(taken.length).toBe(3);
  });

  test("what was taken back leaves no trace in the beliefs", () => {
    const wrong = find(find(empty, "left", "nothing"), "right", "nothing");
    const back = wrong
      .slice(1)
      .reduce<Log>((log, { id }) => add(log, { entry: "taken back", taken: id }, 0), wrong);
    expect(chance(back, lostReturn)).toBeCloseTo(chance(empty, lostReturn), 12);
  });

  test("nobody is asked for a second opinion where nobody is", () => {
    const asked = (log: Log) => {
      const { model, evidence } = derived(log);
      return neighbour(model, evidence, "position 1");
    };
    const wrong = at(find(empty, "left", "middle"), "position 2", "left", "middle");
    expect(asked(wrong)).toBe("position 2");
    const away = add(wrong, { entry: "absent", position: "position 2" }, 0);
    expect(asked(away)).toBe("position 3");
    const back = add(away, { entry: "taken back", taken: away.at(-1)?.id ?? "" }, 0);
    expect(asked(back)).toBe("position 2");
  });

  test("the order of findings between two moves does not matter", () => {
    const one = find(
      find(find(empty, "left", "all round"), "right", "all round"),
      "pair",
      "nothing",
      "all round",
    );
    const other = find(
      find(find(empty, "pair", "nothing", "all round"), "right", "all round"),
      "left",
      "all round",
    );
    expect(chance(one, lostReturn)).toBeCloseTo(chance(other, lostReturn), 12);
    expect(chance(one, lostReturn)).toBeGreaterThan(0.5);
  });

  test("beliefs sum to one in every branch", () => {
    const { model, beliefs } = derived(
      at(find(empty, "left", "nothing"), "position 3", "pair", "middle", "all round"),
    );
    for (const branch of model.branches)
      expect(beliefs.sets(branch).probabilities.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
  });

  test("'can't tell' changes nothing", () => {
    const { model } = derived(empty);
    const all = model.rig.positions.length > 0 ? derived(empty).groups : [];
    const unsure = add(
      empty,
      {
        entry: "finding",
        finding: { asked: { check: "pair", position: "position 1" }, results: [] },
      },
      0,
    );
    expect(all.length).toBeGreaterThan(0);
    expect(chance(unsure, lostReturn)).toBeCloseTo(chance(empty, lostReturn), 12);
  });
});

describe("moves", () => {
  const hollow = find(
    find(find(empty, "left", "all round"), "right", "all round"),
    "pair",
    "nothing",
    "all round",
  );
  const replaced = add(
    hollow,
    { entry: "move", move: { move: "replaced", place: "headphones 1" } },
    0,
  );

  test("a part taken away takes its faults along, and what was heard before speaks of before", () => {
    // But for what a new part may bring along.
    expect(chance(replaced, lostReturn)).toBeLessThan(0.001);
    const { standing } = derived(replaced);
    expect(standing("position 1").trouble).toBeLessThan(
      derived(hollow).standing("position 1").trouble,
    );
  });

  test("if it is the same afterwards, it was not that part", () => {
    const still = find(find(replaced, "left", "all round"), "pair", "nothing", "all round");
    const [first] = derived(still).standing("position 1").suspects;
    expect(first?.group.faults.some(lostReturn)).toBe(false);
    expect(first?.group.faults.every(({ part }) => part !== "headphones 1")).toBe(true);
  });

  test("a mended part is named no more: the next of its group is", () => {
    const dead = ["position 2", "position 3"].reduce(
      well,
      find(
        find(find(empty, "left", "nothing"), "right", "right ear"),
        "pair",
        "right ear",
        "right ear",
      ),
    );
    const named = (log: Log) => derived(log).standing("position 1").leading?.group.faults[0];
    expect(named(dead)?.part).toBe("headphones 1");
    const other = add(
      dead,
      { entry: "move", move: { move: "replaced", place: "headphones 1" } },
      0,
    );
    const still = find(find(other, "left", "nothing"), "right", "right ear");
    expect(named(still)?.id).toBe("amplifier / output 1 / left side of the output dead");
    const moved = add(
      still,
      { entry: "move", move: { move: "replaced", place: "amplifier, output 1" } },
      0,
    );
    expect(derived(well(moved, "position 1")).state("position 1")).toBe("healthy");
  });

  test("words that no list has say nothing, and never make a position healthy", () => {
    const odd = find(find(find(empty, "left", "somewhere"), "right"), "pair", "up", "down");
    expect(derived(odd).state("position 1")).not.toBe("healthy");
    expect(chance(odd, lostReturn)).toBeCloseTo(chance(empty, lostReturn), 12);
  });

  test("after a move a position is healthy only when it was heard again", () => {
    const before = find(
      find(find(empty, "left", "left ear"), "right", "right ear"),
      "pair",
      "middle",
      "all round",
    );
    expect(derived(before).state("position 1")).toBe("healthy");
    const touched = add(before, { entry: "move", move: { move: "set right", place: "mixer" } }, 0);
    expect(derived(touched).state("position 1")).not.toBe("healthy");
    const again = find(
      find(find(touched, "left", "left ear"), "right", "right ear"),
      "pair",
      "middle",
      "all round",
    );
    expect(derived(again).state("position 1")).toBe("healthy");
  });

  test("setting right cures what can be seen and nothing else", () => {
    const mono = find(find(empty, "left", "middle"), "right", "middle");
    const set = add(mono, { entry: "move", move: { move: "set right", place: "mixer" } }, 0);
    expect(chance(set, mixerMono)).toBe(0);
    const shorted = (fault: RigFault) =>
      fault.part === "feed lead" && fault.name === "tip and ring shorted";
    expect(chance(set, shorted)).toBeCloseTo(chance(mono, shorted), 9);
  });
});

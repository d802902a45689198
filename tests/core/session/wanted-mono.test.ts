import { describe, expect, test } from "vitest";
import type { WantedFeed } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { add, type Log } from "#core/session/log.ts";
import { whereNext } from "#core/session/where.ts";
import { at, derived, inMono, well } from "#tests/support/entries.ts";

/** Four seats, of which the second wants something else than stereo. */
function table(wants: WantedFeed): Log {
  const rig = fromHeadphoneSocket("four", ["one", "two", "three", "four"]);
  const positions = rig.positions.map((one, index) => (index === 1 ? { ...one, wants } : one));
  return add([], { entry: "drawing", rig: { ...rig, positions } }, 0);
}

const answered = (
  log: Log,
  position: string,
  ...answers: readonly [string, string, string, string]
) =>
  at(
    at(at(log, position, "left", answers[0]), position, "right", answers[1]),
    position,
    "pair",
    answers[2],
    answers[3],
  );

describe("a position that wants something else than stereo", () => {
  test("in mono it is healthy where another seat is not", () => {
    expect(derived(inMono(table("mono"), "position 2")).state("position 2")).toBe("healthy");
    expect(derived(inMono(table("mono"), "position 3")).state("position 3")).not.toBe("healthy");
  });

  test("stereo is wrong there", () => {
    expect(derived(well(table("mono"), "position 2")).state("position 2")).not.toBe("healthy");
  });

  test.each(["left ear", "right ear"] as const)("all of it in the %s", (ear) => {
    const log = answered(table(ear), "position 2", ear, ear, ear, "nothing");
    expect(derived(log).state("position 2")).toBe("healthy");
    const other = ear === "left ear" ? "right ear" : "left ear";
    const swapped = answered(table(ear), "position 2", other, other, other, "nothing");
    expect(derived(swapped).state("position 2")).not.toBe("healthy");
  });

  test("a dead ear is found there too, and is its own", () => {
    const log = answered(
      well(table("mono"), "position 1"),
      "position 2",
      "left ear",
      "left ear",
      "left ear",
      "nothing",
    );
    const { beliefs, model } = derived(log);
    const shared = beliefs.sets(model.root);
    const clean = shared.faults.findIndex((set) => set.length === 0);
    expect(shared.probabilities[clean]).toBeGreaterThan(0.9);
    const [first] = derived(log).standing("position 2").suspects;
    expect(first?.group.faults.map(({ part }) => part)).toContain("headphones 2");
  });
});

test("nobody is sent to a position where nobody is, until somebody is back", () => {
  const before = well(table("mono"), "position 1");
  const away = ["position 2", "position 3"].reduce<Log>(
    (log, position) => add(log, { entry: "absent", position }, 0),
    before,
  );
  expect(derived(away).state("position 2")).toBe("absent");
  expect(goes(away)).toMatchObject({ go: "position", position: "position 4" });
  expect(goes(well(away, "position 4"))).toEqual({ go: "nowhere" });
  const back = add(away, { entry: "taken back", taken: away.at(-1)?.id ?? "" }, 0);
  expect(goes(well(back, "position 4"))).toMatchObject({ position: "position 3" });
});

/** Where to go next, worked out to its end. */
function goes(log: Log) {
  const looking = whereNext(derived(log));
  for (;;) {
    const { done, value } = looking.next();
    if (done) return value;
  }
}

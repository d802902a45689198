import { describe, expect, test } from "vitest";
import { neverCentred } from "#core/checks/balance.ts";
import type { Finding, MeasuredGains } from "#core/checks/finding.ts";
import type { Rig } from "#core/rig/rig.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { compared } from "#core/session/compared.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";

const [rig = straightIn] = builtInRigs;
const at = "position 3";
const session = (said: readonly Said[] = [], of: Rig = rig): Log =>
  said.reduce<Log>((log, one) => add(log, one, 0), add([], { entry: "drawing", rig: of }, 0));
const found = (finding: Finding, level?: number): Said => ({
  entry: "finding",
  finding,
  ...(level === undefined ? {} : { level }),
});
const heard = (check: string, ...results: string[][]): Said =>
  found({ asked: { check, position: at }, results } as Finding, -40);
const healthy = [
  heard("left", ["left ear"]),
  heard("right", ["right ear"]),
  heard("pair", ["middle"], ["all round"]),
];
const pushed = (answer: string): Said => heard("balance", [answer]);
const measured = (left: number, right: number, level?: "as it comes"): Said => {
  const gains: MeasuredGains = [
    [left, 0],
    [0, 0],
    [0, 0],
    [right, 0],
  ];
  const asked = { check: "matrix", position: at } as const;
  return found({ asked, gains, error: 0.001, ...(level === undefined ? {} : { level }) });
};
const changed = (then: Log, now: Log) =>
  compared(then, now)?.positions.find(({ position }) => position === at);
const decibels = (by: number) => 10 ** (by / 20);

/** Answered on, as it sounds where the return of one is lost, with every move refused; until there is a verdict. */
function toVerdict(log: Log): Log {
  const advice = derive(log)?.standing(at).advice;
  if (advice?.advice === "do")
    return toVerdict(add(log, { entry: "cannot", move: advice.move }, 0));
  if (advice?.advice !== "ask") return log;
  const { asked } = advice.option;
  const results = "position" in asked && asked.position !== at ? sound[asked.check] : [];
  if (results === undefined || results.length === 0) return log;
  return toVerdict(add(log, found({ asked, results } as Finding), 0));
}

const sound: Readonly<Record<string, string[][]>> = {
  left: [["left ear"]],
  right: [["right ear"]],
  pair: [["middle"], ["all round"]],
};

describe("two sessions of one rig", () => {
  test("one that was healthy and has lost its return", () => {
    const lost = [
      heard("left", ["all round"]),
      heard("right", ["all round"]),
      heard("pair", ["nothing"], ["all round"]),
    ];
    const change = changed(session(healthy), toVerdict(session(lost)));
    expect(change?.was).toEqual({ state: "healthy" });
    expect(change?.is).toMatchObject({ state: "wrong", fault: { name: expect.any(String) } });
  });

  test("measured: position 3 lost 4 dB on the right", () => {
    const change = changed(session([measured(1, 1)]), session([measured(1, decibels(-4))]));
    expect(change?.levels).toEqual([{ change: "ear", ear: "right", by: -4 }]);
  });

  test("by ear: the right lost 4 dB against the left", () => {
    const now = session([pushed("in the middle with the right up 4 dB")]);
    const then = session([pushed("in the middle as it is")]);
    expect(changed(then, now)?.levels).toEqual([{ change: "balance", ear: "right", by: -4 }]);
    expect(changed(now, then)?.levels).toEqual([{ change: "balance", ear: "left", by: -4 }]);
  });

  test("measured and by ear, or measured without a healthy chain, it is one side against the other", () => {
    const then = session([pushed("in the middle as it is")]);
    const now = session([measured(1, decibels(-6))]);
    expect(changed(then, now)?.levels).toEqual([{ change: "balance", ear: "right", by: -6 }]);
    const [loose, looser] = [measured(0.3, 0.3, "as it comes"), measured(0.9, 0.45, "as it comes")];
    expect(changed(session([loose]), session([looser]))?.levels).toEqual([
      { change: "balance", ear: "right", by: -6 },
    ]);
  });

  test("what is less than is noticed is no change", () => {
    const change = changed(session([measured(1, 1)]), session([measured(1, 0.92)]));
    expect(change?.levels).toEqual([]);
    expect(change?.gaps).not.toContain("no levels in both");
  });

  test("the test signal was turned up", () => {
    const left = { asked: { check: "left", position: at }, results: [["left ear"]] } as const;
    const change = changed(session([found(left, -46)]), session([found(left, -40)]));
    expect(change?.levels).toEqual([{ change: "played", by: 6 }]);
  });

  test("what cannot be compared is said", () => {
    expect(changed(session(healthy), session())?.gaps).toEqual(["not heard now"]);
    expect(changed(session(), session(healthy))?.gaps).toContain("not heard then");
    const never = session([pushed(neverCentred)]);
    expect(changed(never, never)?.gaps).toContain("no levels in both");
  });

  test("an answer that was taken back says nothing", () => {
    const now = session([measured(1, 0.5), { entry: "taken back", taken: "2" }]);
    expect(changed(session([measured(1, 1)]), now)?.levels).toEqual([]);
  });

  test("a position that is gone, and one that came", () => {
    const fewer: Rig = {
      ...rig,
      positions: rig.positions.filter(({ id }) => id !== at),
    };
    expect(changed(session(), session([], fewer))).toMatchObject({ gaps: ["only then"] });
    expect(changed(session([], fewer), session())).toMatchObject({ gaps: ["only now"] });
  });

  test("nothing where one has no rig", () => {
    expect(compared([], session())).toBe(undefined);
  });
});

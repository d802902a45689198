import { describe, expect, test } from "vitest";
import { balance, neverCentred } from "#core/checks/balance.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { sheetOf } from "#core/report/session-sheet.ts";
import type { Found } from "#core/report/sheet-found.ts";
import { clientId, type Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { seeded } from "#core/units/random.ts";
import { at, empty, inMono, well } from "#tests/support/entries.ts";
import { walk } from "#tests/walkthrough/walk.ts";

const sheet = (log: Log) => {
  const made = sheetOf(log);
  if (made === undefined) throw new Error("there is no sheet");
  return made;
};
const seat = (log: Log, id: string) => sheet(log).seats.find((one) => one.id === id);
const say = (log: Log, said: Said, time = 0) => add(log, said, time);

describe("what stands on the sheet", () => {
  test("nothing without a rig", () => {
    expect(sheetOf([])).toBeUndefined();
  });

  test("it is called as the last title says, else as its rig", () => {
    expect(sheet(empty)).toMatchObject({ name: "Tallow Hall story evening", who: undefined });
    let log = say(empty, { entry: "titled", name: "Saturday", who: "Ines" }, 50);
    log = say(log, { entry: "titled", name: "Sunday" }, 70);
    expect(sheet(log)).toMatchObject({ name: "Sunday", who: "Ines" });
    log = say(log, { entry: "taken back", taken: "3" }, 90);
    expect(sheet(log)).toMatchObject({ name: "Saturday" });
    expect(sheet(say(log, { entry: "titled", name: "" }, 99)).name).toBe(sheet(empty).name);
  });

  test("it lasts from its first entry to its last that holds, whenever it is named or signed", () => {
    let log = say(empty, { entry: "titled", name: "Saturday" }, 50);
    expect(sheet(log)).toMatchObject({ begun: 0, ended: 0 });
    log = say(log, { entry: "absent", position: "position 4" }, 60);
    log = say(log, { entry: "titled", who: "Ines" }, 7000);
    expect(sheet(log)).toMatchObject({ who: "Ines", begun: 0, ended: 60 });
    log = say(log, { entry: "taken back", taken: "4" }, 8000);
    expect(sheet(log)).toMatchObject({ who: undefined, ended: 60 });
    log = say(log, { entry: "taken back", taken: "3" }, 9000);
    expect(sheet(log)).toMatchObject({ begun: 0, ended: 0 });
    log = say(log, { entry: "move", move: { move: "replaced", place: "headphones 1" } }, 9500);
    expect(sheet(log)).toMatchObject({ ended: 9500 });
  });

  test("each position stands as the board has it, and where nobody is it says so", () => {
    let log = well(empty, "position 1");
    log = at(log, "position 2", "left", "nothing");
    log = say(log, { entry: "absent", position: "position 4" });
    expect(sheet(log).seats.map(({ state }) => state)).toEqual([
      "healthy",
      "begun",
      "not heard",
      "absent",
      "not heard",
    ]);
  });

  test("a mono feed that was ordered is as ordered, and no fault", () => {
    const look = modelFor(sheet(empty).rig).model.looks.find(({ place }) => place === clientId);
    const mono = look?.answers.find((answer) => answer.includes("mono")) ?? "";
    const log = say(inMono(empty, "position 1"), {
      entry: "finding",
      finding: { asked: { check: "look", place: clientId }, results: [[mono]] },
    });
    expect(seat(log, "position 1")?.state).toBe("as ordered");
    expect(sheet(log).found).toEqual([]);
  });

  test("the level is of the last finding there, readings of the way as it is now", () => {
    const found = (check: "left" | "right", level?: number): Said => ({
      entry: "finding",
      finding: {
        asked: { check, position: "position 1" },
        results: [[`${check} ear`]],
      },
      ...(level === undefined ? {} : { level }),
    });
    let log = say(say(empty, found("left", -44)), found("right", -41));
    log = at(log, "position 1", "balance", "in the middle with the right up 4 dB");
    expect(seat(log, "position 1")).toMatchObject({ level: -41, balance: 4 });
    expect(seat(log, "position 2")).toMatchObject({ level: undefined, balance: undefined });
    const never = at(log, "position 2", "balance", neverCentred);
    expect(seat(never, "position 2")?.balance).toBe("never");
    const unsure = say(log, {
      entry: "finding",
      finding: {
        asked: { check: "balance", position: "position 2" },
        results: [balance.questions[0]?.answers ?? []],
      },
    });
    expect(seat(unsure, "position 2")?.balance).toBeUndefined();
    const gains = [
      [1, 0],
      [0, 0],
      [0, 0],
      [0.5, 0],
    ] as const;
    log = say(log, {
      entry: "finding",
      finding: { asked: { check: "matrix", position: "position 1" }, gains, error: 0.01 },
    });
    expect(seat(log, "position 1")?.measured).toEqual(gains);
    log = say(log, { entry: "move", move: { move: "replaced", place: "headphones 1" } });
    expect(seat(log, "position 1")).toMatchObject({ balance: undefined, measured: undefined });
  });

  test("every fault that cannot be heard stands in what was not tested, by its part", () => {
    const { groups } = modelFor(sheet(empty).rig);
    const silent = groups.flatMap(({ inaudible, faults }) => (inaudible ? faults : []));
    const listed = sheet(empty).unheard.flatMap(({ part, faults }) =>
      faults.map((fault) => [part, fault.id]),
    );
    expect(listed.map(([, id]) => id).sort()).toEqual(silent.map(({ id }) => id).sort());
    expect(listed.every(([part, id]) => id?.includes(part ?? "?"))).toBe(true);
  });
});

describe("faults found and mended", () => {
  const [rig] = builtInRigs;
  if (rig === undefined) throw new Error("there is no built-in rig");
  const { groups, model } = modelFor(rig);
  const alike = (found: Found | undefined) =>
    groups.find(({ faults }) => faults.some(({ id }) => id === found?.fault.id))?.faults ?? [];
  const positionOf = (fault: RigFault) =>
    rig.positions.find(({ id }) => model.wayTo(id).some(({ faults }) => faults.includes(fault)))
      ?.id ?? "";
  const audible = groups
    .filter(({ inaudible }) => !inaudible)
    .flatMap(({ faults }) =>
      faults.filter((fault) => !isUnlisted(fault) && fault.part !== clientId),
    );

  /** What the sheet says of a fault that was planted: before what a verdict asked for was done, right after, and healthy again. */
  function told(fault: RigFault) {
    const position = positionOf(fault);
    const walked = walk({ rig: rig as Rig, planted: [fault], slips: 0, random }, position);
    const [before] = sheet(walked.log).found.slice(-1);
    const { advice } = walked.derived.standing(position);
    const move = advice.advice === "verdict" ? advice.mend?.move : undefined;
    if (move === undefined) return { fault, walked, before, mending: before?.end };
    const moved = say(walked.log, { entry: "move", move }, 5);
    const mended = walk({ rig: rig as Rig, planted: [], slips: 0, random }, position, moved);
    const last = sheet(mended.log).found.find((one) => one.fault.id === before?.fault.id);
    return { fault, walked, before, mending: sheet(moved).found.at(-1)?.end, mended, last, move };
  }
  const random = seeded(7);
  /** Leads that are taped down are costly to mend and get a verdict; most else is quickly tried. */
  const isLead = ({ part }: RigFault) => part.endsWith("lead");
  const leads = audible.filter(isLead).filter((_, at) => at % 6 === 0);
  const others = audible.filter((fault) => !isLead(fault)).filter((_, at) => at % 30 === 0);
  const all = [...leads, ...others].map(told);

  test("a verdict is on it as still there, with what was planted among those it cannot tell apart", () => {
    const sure = all.filter(({ walked }) => walked.end === "sure");
    console.log(`planted ${all.length}, verdicts ${sure.length}`);
    expect(sure.length).toBeGreaterThanOrEqual(3);
    for (const { fault, before } of sure) {
      expect(before).toMatchObject({ named: true, end: "still there", mended: undefined });
      expect(alike(before), `${fault.id} as ${before?.fault.id}`).toContain(fault);
    }
  });

  test("after the move it was not checked again, and healthy it is mended by that move", () => {
    const moved = all.filter(({ move, walked }) => move !== undefined && walked.end === "sure");
    expect(moved.length).toBeGreaterThanOrEqual(3);
    for (const { mending } of moved) expect(mending).toBe("not checked again");
    const well = moved.filter(({ mended }) => mended?.end === "healthy");
    expect(well.length).toBeGreaterThanOrEqual(3);
    for (const { last, move } of well) {
      expect(last?.end).toBe("mended");
      expect(last?.mended?.moves).toContainEqual(move);
    }
  });

  test("what something quick cured before any verdict is told by its cure", () => {
    const cured = all.filter(({ walked, before }) => walked.end === "healthy" && before);
    expect(cured.length).toBeGreaterThan(0);
    for (const { before } of cured) {
      expect(before).toMatchObject({ named: false, end: "mended" });
      expect(before?.mended?.moves.length).toBeGreaterThan(0);
    }
    const right = cured.filter(({ fault, before }) => alike(before).includes(fault));
    expect(right.length / cured.length).toBeGreaterThan(0.5);
  });

  test("an answer taken back takes its fault along", () => {
    const { walked } = all.find((one) => one.walked.end === "sure") ?? {};
    const last = walked?.log.at(-1);
    if (walked === undefined || last === undefined) throw new Error("nothing was found");
    const log = say(walked.log, { entry: "taken back", taken: last.id });
    expect(sheet(log).found).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import type { Complaint } from "#core/checks/complaints.ts";
import type { Asked } from "#core/checks/finding.ts";
import { asItShouldBe, sightOf } from "#core/checks/look.ts";
import { clientId } from "#core/rig/rig.ts";
import { standIn, standInFeeds } from "#core/rig/stand-ins.ts";
import { add, type Log } from "#core/session/log.ts";
import { at, chance, derived } from "#tests/support/entries.ts";

const complained = (log: Log, results: readonly Complaint[], position = "position 1"): Log =>
  add(
    log,
    { entry: "finding", finding: { asked: { check: "complaint", position }, results: [results] } },
    0,
  );

const drawnAs = (feed: (typeof standInFeeds)[number], listeners: number): Log =>
  add([], { entry: "drawing", rig: standIn({ feed, listeners }) }, 0);

const alone = drawnAs("laptop", 1);
const several = drawnAs("amplifier after a mixer", 3);
const trouble = (log: Log) => derived(log).standing("position 1").trouble;

describe.each(standInFeeds)("fed from: %s", (feed) => {
  test.each([1, 2])("with %i listening, a complaint leads to one next thing", (listeners) => {
    const log = complained(drawnAs(feed, listeners), ["only the left ear works"]);
    const { advice, suspects } = derived(log).standing("position 1");
    expect(advice.advice).not.toMatch(/healthy|verdict/);
    expect(suspects.length).toBeGreaterThan(3);
    expect(trouble(log)).toBeGreaterThan(0.7);
  });
});

describe("what a complaint says", () => {
  test("somebody who complains is believed to have trouble, who says that all is well to have less", () => {
    const before = trouble(several);
    for (const one of ["only the left ear works", "no voice", "nothing at all"] as const)
      expect(trouble(complained(several, [one])), one).toBeGreaterThan(2 * before);
    expect(trouble(complained(several, ["no complaint"]))).toBeLessThan(before);
  });

  test("a dead ear points at its own side, and not said which at both", () => {
    const open = (log: Log, contact: string) =>
      chance(
        log,
        ({ part, name, comesAndGoes }) =>
          part === "headphones 1" && name === `${contact} open` && !comesAndGoes,
      );
    const left = complained(several, ["only the left ear works"]);
    expect(open(left, "ring")).toBeGreaterThan(10 * open(left, "tip"));
    const either = complained(several, ["only the left ear works", "only the right ear works"]);
    expect(open(either, "ring")).toBeCloseTo(open(either, "tip"), 1);
    expect(open(either, "ring")).toBeGreaterThan(3 * open(several, "ring"));
  });

  test("others who have nothing to complain of point away from what all share", () => {
    const amplifier = (log: Log) =>
      chance(log, ({ part, name }) => part === "lead" && name === "ring open");
    const one = complained(several, ["only the left ear works"]);
    const others = complained(
      complained(one, ["no complaint"], "position 2"),
      ["no complaint"],
      "position 3",
    );
    expect(amplifier(others)).toBeLessThan(amplifier(one) / 5);
  });

  test("a wrong word is outweighed by three answers", () => {
    const lost = ({ name, part }: { name: string; part: string }) =>
      part === "headphones 1" && name === "sleeve open";
    const mono = complained(alone, ["the same in both ears"]);
    const heard = add(
      at(at(mono, "position 1", "left", "all round"), "position 1", "right", "all round"),
      {
        entry: "finding",
        finding: {
          asked: { check: "pair", position: "position 1" },
          results: [["nothing"], ["all round"]],
        },
      },
      0,
    );
    expect(derived(heard).standing("position 1").suspects[0]?.group.faults.some(lost)).toBe(true);
  });
});

describe("a feed that was ordered so", () => {
  const inMono = at(
    at(complained(several, ["the same in both ears"]), "position 1", "left", "middle"),
    "position 1",
    "right",
    "middle",
  );
  const look = (log: Log, place: string, sight: string): Log =>
    add(
      log,
      { entry: "finding", finding: { asked: { check: "look", place }, results: [[sight]] } },
      0,
    );

  test("is a suspect once mono is heard, and asking shows it", () => {
    const ordered = derived(inMono)
      .model.branches.flatMap(({ faults }) => faults)
      .find(({ part, name }) => part === clientId && name === "mono is meant");
    if (ordered === undefined) throw new Error("nobody orders mono");
    const isIt = (log: Log) => chance(log, ({ id }) => id === ordered.id);
    expect(isIt(inMono)).toBeGreaterThan(0.1);
    expect(isIt(look(inMono, clientId, sightOf(ordered)))).toBeGreaterThan(0.95);
    expect(isIt(look(inMono, clientId, asItShouldBe))).toBeLessThan(0.05);
  });

  /** What somebody finds who hears the same mono everywhere and sees nothing out of order. */
  const found = (log: Log, asked: Asked): Log => {
    if (asked.check === "look") return look(log, asked.place, asItShouldBe);
    if (!("position" in asked) || asked.check === "complaint") throw new Error(asked.check);
    if (asked.check !== "pair") return at(log, asked.position, asked.check, "middle");
    return at(log, asked.position, "pair", "middle", "nothing");
  };

  const askedNext = (log: Log): Asked => {
    const { advice } = derived(log).standing("position 1");
    if (advice.advice !== "ask" || advice.option.asked.check === "matrix")
      throw new Error(`${advice.advice} without having asked`);
    return advice.option.asked;
  };

  const isOfClient = (asked: Asked) => asked.check === "look" && asked.place === clientId;

  test("is asked about before anything is called a fault, where nothing else was seen", () => {
    let log = inMono;
    let asked = askedNext(log);
    for (let looked = 0; looked < 12 && !isOfClient(asked); looked++) {
      log = found(log, asked);
      asked = askedNext(log);
    }
    expect(isOfClient(asked)).toBe(true);
  });
});

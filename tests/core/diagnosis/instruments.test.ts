import { describe, expect, test } from "vitest";
import type { Happening, MeasuredGains } from "#core/checks/finding.ts";
import { leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { chances } from "./chances.ts";

const rig = leadRig({ kind: "TRS lead", by: "load box" });

const matrix = (gains: readonly number[], level?: "as it comes"): Happening => ({
  kind: "finding",
  finding: {
    asked: { check: "matrix", position: provedAt },
    gains: gains.map((re) => [re, 0]) as unknown as MeasuredGains,
    error: 0.002,
    ...(level === undefined ? {} : { level }),
  },
});

const found = (...happenings: readonly Happening[]): Log =>
  happenings.reduce<Log>(
    (log, one) =>
      one.kind === "finding" ? add(log, { entry: "finding", finding: one.finding }, 0) : log,
    add([], { entry: "drawing", rig }, 0),
  );

const standing = (log: Log) => derive(log)?.standing(provedAt);
const sound = [1, -0.01, -0.01, 1];

describe("a position that ends in an instrument", () => {
  test("has nobody who listens, and nothing there is asked by ear", () => {
    const built = build(rig);
    expect(built.parts.map(({ kind }) => kind)).not.toContain("listener");
    const { advice } = standing(found()) ?? {};
    expect(advice?.advice === "ask" ? advice.option.asked : undefined).toEqual({
      check: "matrix",
      position: provedAt,
    });
  });

  test("is healthy once it was measured so, and only then", () => {
    expect(standing(found(matrix(sound)))?.advice.advice).toBe("healthy");
    expect(standing(found(matrix([1, 0, 0, 0])))?.advice.advice).not.toBe("healthy");
  });

  test("a level that is too low is a fault, unless levels were taken as they come", () => {
    const half = sound.map((gain) => gain / 2);
    const trouble = (level?: "as it comes") => standing(found(matrix(half, level)))?.trouble ?? 0;
    expect(trouble()).toBeGreaterThan(0.8);
    expect(trouble("as it comes")).toBeLessThan(0.03);
  });

  test("what nothing on the list explains is said to be that", () => {
    const { suspects } = standing(found(matrix([0.5, 0.4, -0.3, 0.6]))) ?? {};
    expect(suspects?.[0]?.group.faults[0]?.name).toBe("something not on the list");
  });

  test("who is known to be good is drawn, and has no faults", () => {
    const suspects = rigFaults(build(rig)).map(({ part }) => part);
    expect([...new Set(suspects)]).toEqual(["lead"]);
  });
});

describe("a lead bent under a meter", () => {
  const reading = (bent?: "steady" | "changes"): Happening => ({
    kind: "finding",
    finding: {
      asked: { check: "continuity", part: "lead", from: "near.tip", to: "far.tip" },
      ohms: 0.4,
      ...(bent === undefined ? {} : { bent }),
    },
  });
  const loose = (of: Rig, bent?: "steady" | "changes") =>
    chances([reading(bent)], of).get("lead / body / tip open, now and then") ?? 0;

  test("'it changes' points at a contact that comes and goes; 'steady' speaks against it", () => {
    expect(loose(rig, "changes")).toBeGreaterThan(10 * loose(rig));
    expect(loose(rig, "steady")).toBeLessThan(loose(rig) / 5);
  });
});

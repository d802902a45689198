import { describe, expect, test } from "vitest";
import type { Happening } from "#core/checks/finding.ts";
import { chances, heard } from "./chances.ts";

describe("evidence that is no answer to a sound", () => {
  test("sometimes: what is heard now and then points at a contact that makes and breaks", () => {
    const now = (otherTimes?: readonly (readonly string[])[]): readonly Happening[] => [
      {
        kind: "finding",
        finding: {
          asked: { check: "left", position: "position 1" },
          results: [["nothing"]],
          ...(otherTimes === undefined ? {} : { otherTimes }),
        },
      },
    ];
    const loose = (some: ReadonlyMap<string, number>) =>
      some.get("headphones 1 / body / tip open, now and then") ?? 0;
    expect(loose(chances(now([["left ear"]])))).toBeGreaterThan(4 * loose(chances(now())));
  });

  test("a twisted plug that changes something points at its contacts", () => {
    const twisted = (said: string): readonly Happening[] => [
      heard("position 1", "left", "nothing"),
      {
        kind: "finding",
        finding: {
          asked: { check: "twist", part: "headphones 1", plug: "plug" },
          results: [[said]],
        },
      },
    ];
    const loose = (some: ReadonlyMap<string, number>) =>
      some.get("headphones 1 / body / tip open, now and then") ?? 0;
    expect(loose(chances(twisted("it comes and goes")))).toBeGreaterThan(
      10 * loose(chances(twisted("nothing changes"))),
    );
  });

  test("a meter's reading and a measured matrix tell what ears cannot", () => {
    const silent = heard("position 1", "left", "nothing");
    const reading = (ohms?: number): Happening => ({
      kind: "finding",
      finding: {
        asked: { check: "continuity", part: "feed lead", from: "near.tip", to: "far.tip" },
        ...(ohms === undefined ? {} : { ohms }),
      },
    });
    const open = (some: ReadonlyMap<string, number>) =>
      some.get("feed lead / body / tip open") ?? 0;
    const before = open(chances([silent]));
    expect(open(chances([silent, reading()]))).toBeGreaterThan(10 * before);
    expect(open(chances([silent, reading(0.3)]))).toBeLessThan(before / 10);

    const measured = (ll: number): Happening => ({
      kind: "finding",
      finding: {
        asked: { check: "matrix", position: "position 1" },
        gains: [
          [ll, 0],
          [0, 0],
          [0, 0],
          [1, 0],
        ],
        error: 0.01,
      },
    });
    const trouble = (some: readonly Happening[]) =>
      [...chances(some)].reduce((sum, [id, p]) => sum + (/ tip open$/.test(id) ? p : 0), 0);
    expect(trouble([measured(0)])).toBeGreaterThan(20 * trouble([measured(1)]));
  });
});

import { describe, expect, test } from "vitest";
import { fits } from "#core/parts/plugs.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { effectOf } from "#core/rig/effect.ts";
import { build, plugOf, socketOf } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { type Known, mostListeners, standIn, standInFeeds } from "#core/rig/stand-ins.ts";
import { modelFor } from "#core/session/derive.ts";

const all = standInFeeds.flatMap((feed) =>
  [1, 2, 3, 8, mostListeners].flatMap((listeners) =>
    [{}, { worn: "headphones" }, { worn: "in-ears" }].map(
      (worn) => ({ feed, listeners, ...worn }) as Known,
    ),
  ),
);

const title = ({ feed, listeners, worn }: Known) =>
  `${feed}, ${listeners} listening, ${worn ?? "what is usual"}`;

describe.each(all.map((known) => [title(known), known] as const))("%s", (_, known) => {
  const plan = standIn(known);
  const rig = build(plan);

  test("is a stereo feed to everybody, the right way round", () => {
    expect(plan.positions).toHaveLength(known.listeners);
    for (const { id } of plan.positions)
      expect(effectOf(relativeGains(rig, id, []))).toBe("straight");
  });

  test("every plug goes into its socket, and no socket has two", () => {
    for (const { part, plug, into, socket } of plan.plugged)
      expect(fits(plugOf(rig.part(part), plug), socketOf(rig.part(into), socket)), part).toBe(true);
    const used = plan.plugged.map(({ into, socket }) => `${into}: ${socket}`);
    expect(used).toEqual([...new Set(used)]);
  });

  test("is a tree with faults, what is worn among them", () => {
    expect(modelFor(plan).model.root.positions).toHaveLength(known.listeners);
    const [first] = plan.positions;
    const faults = rigFaults(rig).filter(({ part }) => part === first?.wears);
    expect(faults.length).toBeGreaterThan(10);
    expect(rig.part(first?.wears ?? "").kind).toBe(
      known.worn ?? (known.feed === "belt pack" ? "in-ears" : "headphones"),
    );
  });
});

test("who does not know gets what is commonest", () => {
  const kinds = (listeners: number) =>
    standIn({ feed: "don't know", listeners }).parts.map(({ kind }) => kind);
  expect(kinds(1)).toEqual(["laptop", "headphones"]);
  expect(kinds(4)).toContain("headphone amplifier");
});

test("a number nobody can sit on is refused with what is understood", () => {
  for (const listeners of [0, 1.5, mostListeners + 1, Number.NaN])
    expect(() => standIn({ feed: "laptop", listeners })).toThrow(/from 1 to 64/);
});

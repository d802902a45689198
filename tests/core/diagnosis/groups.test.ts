import { describe, expect, test } from "vitest";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { builtInRigs, fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";

const [rig] = builtInRigs;
if (rig === undefined) throw new Error("there is no built-in rig");
const { groups, model } = modelFor(rig);

const groupOf = (part: string, name: string) =>
  groups.find(({ faults }) => faults.some((fault) => fault.part === part && fault.name === name));

describe("groups", () => {
  test("every fault is in exactly one", () => {
    const all = groups.flatMap(({ faults }) => faults);
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBe(model.branches.flatMap(({ faults }) => faults).length);
  });

  test("are worked out from the rig alone: the same rig, the same groups", () => {
    const again = modelFor(JSON.parse(JSON.stringify(rig))).groups;
    const ids = (some: typeof groups) => some.map(({ faults }) => faults.map(({ id }) => id));
    expect(ids(again)).toEqual(ids(groups));
  });

  test("an open tip and a dead left driver cannot be told apart; a short and an open can", () => {
    const dead = groupOf("headphones 1", "left driver dead");
    expect(dead?.faults.map(({ name }) => name)).toContain("tip open");
    expect(groupOf("headphones 1", "tip and ring shorted")).not.toBe(dead);
  });

  test("which side is inverted cannot be heard", () => {
    expect(groupOf("headphones 1", "left driver inverted")).toBe(
      groupOf("headphones 1", "right driver inverted"),
    );
  });

  test("what answers like a healthy chain is set apart: 3 Ω of dirt, a return that has a second way", () => {
    expect(groupOf("headphones 1", "return of 3 ohms")?.inaudible).toBe(true);
    expect(groupOf("headphones 1", "return of 30 ohms")?.inaudible).toBe(false);
    const sleeve = groups.find(({ faults }) =>
      faults.some(
        ({ part, at, name }) => part === "insert lead" && at === "left" && name === "sleeve open",
      ),
    );
    expect(sleeve?.inaudible).toBe(true);
  });

  test("'something not on the list' stands by itself in every branch", () => {
    const others = groups.filter(({ faults }) => faults.some(isUnlisted));
    expect(others.length).toBe(model.branches.length);
    for (const { faults, inaudible } of others) {
      expect(faults.length).toBe(1);
      expect(inaudible).toBe(false);
    }
  });

  test("the mono send of an actively balanced mixer is hollow, of an impedance-balanced one in one ear", () => {
    const plain = fromHeadphoneSocket("plain", ["one", "two"]);
    const impedance = {
      ...plain,
      parts: plain.parts.map((part) =>
        part.kind === "mixer"
          ? { ...part, settings: { balancing: "impedance-balanced" as const } }
          : part,
      ),
    };
    const { model: other } = modelFor(impedance);
    const sent = (root: typeof model.root) =>
      root.faults.find(({ name, at }) => name === "wrong socket" && at === "near in send");
    const gains = (one: typeof model) => {
      const fault = sent(one.root);
      return one.pool
        .behaviour(one.under("position 1", fault ? [fault] : []))
        .gains.map((row) => row.map(({ re }) => re));
    };
    const [activeLeft, activeRight] = gains(model);
    const [left, right] = gains(other);
    expect(Math.sign((activeLeft?.[0] ?? 0) * (activeRight?.[0] ?? 0))).toBe(-1);
    expect(left?.[0]).toBeGreaterThan(0.7); // at the ear, past what headphones take of it
    expect(Math.abs(right?.[0] ?? 1)).toBeLessThan(0.01);
  });
});

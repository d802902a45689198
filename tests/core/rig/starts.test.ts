import { describe, expect, test } from "vitest";
import { fits } from "#core/parts/plugs.ts";
import { chainTo } from "#core/rig/chain.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build, plugOf, socketOf } from "#core/rig/rig.ts";
import { starts } from "#core/rig/starts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { size } from "#core/units/complex.ts";
import { starts as english } from "#ui/words/english/starts.ts";
import { starts as german } from "#ui/words/german/starts.ts";

describe.each(starts)("$key", ({ make }) => {
  test.each([
    ["English", english],
    ["German", german],
  ])("can be, every plug in its size: %s", (_, words) => {
    const rig = make(words);
    expect(rigTroubles(rig)).toEqual([]);
    const built = build(rig);
    for (const end of rig.plugged)
      expect(
        fits(plugOf(built.part(end.part), end.plug), socketOf(built.part(end.into), end.socket)),
        JSON.stringify(end),
      ).toBe(true);
  });

  test("brings left to the left ear and right to the right one, all of it to everybody", () => {
    const rig = build(make(english));
    for (const { id } of rig.positions) {
      const [ll = 0, lr = 0, rl = 0, rr = 0] = earMatrix(rig, id, []).flat().map(size);
      expect(ll).toBeGreaterThan(0.2);
      expect(Math.abs(ll - rr)).toBeLessThan(0.01 * ll);
      expect(Math.max(lr, rl)).toBeLessThan(0.1 * ll);
    }
  });

  test("is walked from the source to every listener, and the first check is asked", () => {
    const rig = make(english);
    const built = build(rig);
    const derived = derive(add([], { entry: "drawing", rig }, 0));
    for (const { id } of rig.positions) {
      const [first, ...rest] = chainTo(built, id);
      expect(first?.family).toBe("source");
      expect(rest.at(-1)?.family).toBe("person");
      expect(derived?.standing(id).advice.advice).toBe("ask");
    }
  });
});

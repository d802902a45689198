import { describe, expect, test } from "vitest";
import { measureReturn } from "#core/measurement/measured.ts";
import { multitone } from "#core/signals/multitone.ts";
import { renderSignal } from "#core/signals/render.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import { behind, polarities } from "#tests/bench/soak-measuring.ts";
import { lowPass } from "./filters.ts";
import { addNoise, captured, making } from "./made.ts";
import { measure, measuredOf, sentLevel } from "./truth.ts";

describe("from gains with their noise", () => {
  test("a wire at −10 dB is told right 3000 times of 3000", () => {
    const [wire] = behind;
    expect(wire?.ratio).toBe(-10);
    expect(polarities(wire?.filter ?? lowPass(1, 2), -10, 3000)).toEqual({
      right: 3000,
      wrong: 0,
      refused: 0,
    });
  });

  test.for(behind.slice(1))("behind $name it is never told wrong", ({ filter, ratio }) => {
    const { right, wrong } = polarities(filter, ratio, 300);
    expect(wrong).toBe(0);
    expect(right).toBeGreaterThan(100);
  });
});

describe("from a capture", () => {
  test.for([1, 2, 3, 4])("at −10 dB, unknown %d", (seed) => {
    const random = seeded(100 + seed);
    const sign = random() < 0.5 ? 1 : -1;
    const made = {
      ...making,
      inputs: 1,
      delay: 0.8 * random(),
      drift: 400 * (random() - 0.5),
      gain: (_: number, programme: number) => ({ re: programme === 0 ? sign : 0, im: 0 }),
    };
    const result = measure(made, -10, seed);
    expect(result.entries[0]?.[0]?.polarity).toBe(sign);
    expect(result.entries[0]?.[1]?.carried).toBe(false);
    expect(Math.abs(result.delay.value - made.delay)).toBeLessThan(1e-5);
  });

  test("behind low-passes that ring, run over the samples themselves", () => {
    const rate = 48_000;
    const { left, right } = renderSignal(multitone, rate, 1);
    for (const corner of [4000, 1000, 400]) {
      const random = seeded(corner);
      const inputs = [left, right].map((samples, side) => {
        const out = new Float64Array(samples.length + 20_000);
        out.set(
          filtered(samples, corner, rate).map((x) => (side === 0 ? x : -x)),
          10_000,
        );
        return addNoise(out, sentLevel * fromDecibels(-20), random);
      });
      const result = measuredOf(measureReturn(captured(rate, inputs)));
      for (const side of [0, 1]) {
        expect(result.entries[side]?.[side]?.polarity, `${corner} Hz`).toBe(side === 0 ? 1 : -1);
        expect(result.entries[side]?.[1 - side]?.carried).toBe(false);
      }
    }
  });
});

/** Eighth order: four sections in a row, by the bilinear transform. */
function filtered(samples: Float32Array, corner: number, rate: number): Float64Array {
  let out = Float64Array.from(samples);
  for (let section = 0; section < 4; section += 1) {
    const quality = 1 / (2 * Math.cos((Math.PI * (2 * section + 1)) / 16));
    const w = 2 * Math.PI * (corner / rate);
    const alpha = Math.sin(w) / (2 * quality);
    const [b, back] = [(1 - Math.cos(w)) / 2, 2 * Math.cos(w)];
    let [x1, x2, y1, y2] = [0, 0, 0, 0];
    out = out.map((x) => {
      const y = (b * (x + 2 * x1 + x2) + back * y1 - (1 - alpha) * y2) / (1 + alpha);
      x2 = x1;
      x1 = x;
      y2 = y1;
      y1 = y;
      return y;
    });
  }
  return out;
}

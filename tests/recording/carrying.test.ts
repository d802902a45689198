import { describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { multitone } from "#core/signals/multitone.ts";
import { renderSignal } from "#core/signals/render.ts";
import { seeded } from "#core/units/random.ts";
import { wholeOf } from "#recording/blocks.ts";
import { carrying } from "#recording/carrying.ts";
import { layoutOf } from "#recording/layout.ts";
import { inMemory } from "./slices.ts";

const rate = 16_000;
const { left, right } = renderSignal(multitone, rate, 1);
const random = seeded(1);
const noise = (size: number) => left.map(() => size * (2 * random() - 1));
const times = (size: number, samples: Float32Array) => samples.map((x) => size * x);
const sum = (one: Float32Array, other: Float32Array) => one.map((x, n) => x + (other[n] ?? 0));
const nothing = left.map(() => 0);
const voice = left.map((_, n) => 0.5 * Math.sin(0.05 * n) * Math.sin(0.0007 * n));

/** The channels that are taken, counted from 0. */
async function taken(...channels: readonly Float32Array[]) {
  const file = new wavefile.WaveFile();
  file.fromScratch(
    channels.length,
    rate,
    "32f",
    channels.map((one) => [...one]),
  );
  const { slices } = inMemory(file.toBuffer());
  const layout = await layoutOf(slices);
  if ("trouble" in layout) throw new Error(layout.trouble);
  return carrying(slices, layout, wholeOf(layout));
}

describe("which channels carry the signal", () => {
  test("of two both, whatever they carry", async () => {
    expect(await taken(nothing, left)).toEqual([0, 1]);
  });

  test("of one that one", async () => {
    expect(await taken(left)).toEqual([0]);
  });

  test("of six the two, softer than noise and voices beside them", async () => {
    const channels = [
      noise(0.5),
      voice,
      times(0.01, right),
      nothing,
      noise(0.1),
      times(0.01, left),
    ];
    expect(await taken(...channels)).toEqual([2, 5]);
  });

  test("in noise that is as strong as the signal", async () => {
    const level = 10 ** (multitone.level / 20);
    const hiss = () => noise(level * Math.sqrt(3));
    const channels = [hiss(), sum(left, hiss()), hiss(), sum(right, hiss())];
    expect(await taken(...channels)).toEqual([1, 3]);
  });

  test("behind a filter that lets nothing through above some hundred hertz", async () => {
    const deep = (samples: Float32Array) => {
      let [one, other] = [0, 0];
      return samples.map((x) => {
        one += 0.1 * (x - one);
        other += 0.1 * (one - other);
        return other + 1e-3 * (random() - 0.5);
      });
    };
    expect(await taken(noise(1e-2), deep(left), deep(right))).toEqual([1, 2]);
  });

  test("one where nothing but crosstalk of −60 dB is on another", async () => {
    expect(await taken(noise(1e-4), sum(times(1e-3, left), noise(1e-5)), left, nothing)).toEqual([
      2,
    ]);
  });

  test("a side 30 dB down is taken", async () => {
    expect(await taken(noise(1e-3), nothing, left, times(0.03, right))).toEqual([2, 3]);
  });
});

import { describe, expect, test } from "vitest";
import { admit } from "#core/signals/admit.ts";
import { type AnyName, everyName, everything } from "#core/signals/everything.ts";
import { renderSignal } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Hertz } from "#core/units/units.ts";

const rates = [44_100, 48_000];
const level = (samples: Float32Array) =>
  toDecibels(Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length));
const peak = (samples: Float32Array) =>
  toDecibels(samples.reduce((most, x) => Math.max(most, Math.abs(x)), 0));

const rendered = new Map<string, Sound>();

/** A signal's sound, made once: most of these take a while. */
function soundOf(name: AnyName, rate: Hertz): Sound {
  const known = rendered.get(`${name} ${rate}`);
  const sound = known ?? renderSignal(everything[name], rate, 1);
  rendered.set(`${name} ${rate}`, sound);
  return sound;
}

/** Samples that show a signal's level: of what repeats one round, of tones the middle half of their first stretch, else all of that. */
function showing(name: AnyName, rate: Hertz): Float32Array {
  const [signal, sound] = [everything[name], soundOf(name, rate)];
  const [first] = signal.stretches(1);
  if (first === undefined) return new Float32Array(1);
  const channel = first.left === 0 ? sound.right : sound.left;
  const length = first.end - first.start;
  const edge = length > 0.5 ? length / 4 : 0;
  const round = signal.loop?.(rate);
  if (round !== undefined && first.end * rate > round.to)
    return channel.subarray(round.from, round.to);
  const [from, to] = [first.start + edge, first.end - edge].map((at) => Math.round(at * rate));
  return channel.subarray(from, to);
}

describe.for(rates)("at %d Hz", (rate) => {
  test.for(everyName)("%s is no taller than it says", (name) => {
    const sound = soundOf(name, rate);
    for (const side of ["left", "right"] as const)
      expect(peak(sound[side])).toBeLessThanOrEqual(everything[name].peak + 1e-3);
  });

  test.for(everyName.filter((name) => name !== "silence" && name !== "staircase"))(
    "%s is as loud as it says",
    (name) => {
      expect(Math.abs(level(showing(name, rate)) - everything[name].level)).toBeLessThan(0.05);
    },
  );

  test.for(everyName)("%s passes gate one, or is for instruments alone", (name) => {
    expect("refused" in admit(soundOf(name, rate))).toBe(name === "staircase");
  });

  test.for(everyName.filter((name) => everything[name].loop !== undefined))(
    "%s goes round without a seam",
    (name) => {
      const signal = everything[name];
      const { left, right } = soundOf(name, rate);
      const { from, to } = signal.loop?.(rate) ?? { from: 0, to: 0 };
      expect([from, to].map(Number.isInteger)).toEqual([true, true]);
      for (const channel of [left, right])
        for (let n = 0; n < 64; n += 1)
          expect(Math.abs((channel[to + n] ?? 1) - (channel[from + n] ?? 0))).toBeLessThan(1e-6);
    },
  );
});

test.for(everyName)("%s is the same each time", (name) => {
  const [one, other] = [soundOf(name, 44_100), renderSignal(everything[name], 44_100, 1)];
  for (const side of ["left", "right"] as const)
    expect(one[side].every((x, n) => x === other[side][n])).toBe(true);
});

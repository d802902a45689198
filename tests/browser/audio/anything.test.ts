import { describe, expect, test, vi } from "vitest";
import { createPlayer } from "#audio/web-player.ts";
import { signals } from "#core/signals/catalogue.ts";
import { RunningMean } from "#core/signals/running-mean.ts";
import { seeded } from "#core/units/random.ts";
import { blows, hesitate, type Press, script } from "./presses.ts";
import { pause, Stage, settled } from "./stage.ts";
import { type Heard, soundingSpan } from "./tap.ts";

const stage = new Stage();

/** What was heard in one go: samples that follow each other in one context. On a busy page the recorder loses blocks, or hands one over twice. */
function stretches(heard: readonly Heard[]): Heard[][] {
  const contexts = [...new Set(heard.map(({ context }) => context))];
  return contexts.flatMap((one) => {
    const all = heard.filter(({ context }) => context === one);
    const cuts = all.flatMap(({ at }, n) =>
      Math.abs(at - (all[n - 1]?.at ?? at)) > 0.0005 ? [n] : [],
    );
    return [0, ...cuts].map((from, n) => all.slice(from, cuts[n] ?? all.length));
  });
}

/** The greatest of what is made of the samples in order. */
const most = (samples: readonly number[], made: (sample: number) => number) =>
  samples.reduce((greatest, sample) => Math.max(greatest, Math.abs(made(sample))), 0);

/** The laws that hold for whatever reaches an output. */
function lawful(stretch: readonly Heard[], rate: number): void {
  for (const side of ["left", "right"] as const) {
    const samples = stretch.map((one) => one[side]);
    const window = (part: number) => new RunningMean(Math.round(part * rate), samples.length);
    const [power, once, twice] = [window(0.3), window(0.15), window(0.15)];
    expect(samples.every(Number.isFinite), "finite").toBe(true);
    expect(
      most(samples, (x) => x),
      "peak",
    ).toBeLessThanOrEqual(10 ** (-12 / 20) + 1e-6);
    expect(
      most(samples, (x) => power.push(x * x)),
      "level",
    ).toBeLessThanOrEqual(10 ** (-20 / 10));
    expect(
      most(samples, (x) => twice.push(once.push(x))),
      "offset",
    ).toBeLessThanOrEqual(0.001);
  }
}

/**
 * How abruptly anything ends, at worst: the peak of the last quarter of a millisecond before silence as a part of the
 * peak of the 20 ms before it. One for a wave that is cut off. What the recorder cuts off says nothing.
 */
function steepestEnd(stretch: readonly Heard[], rate: number): number {
  // At the least level there is, a tone is three times as loud as what counts here.
  const [width, silent, loud] = [Math.round(rate / 4000), 1e-5, 1e-4];
  const ends = (["left", "right"] as const).flatMap((side) => {
    const peaks = Array.from({ length: Math.floor(stretch.length / width) }, (_, at) =>
      most(
        stretch.slice(at * width, (at + 1) * width).map((one) => one[side]),
        (x) => x,
      ),
    );
    return peaks.flatMap((peak, at) => {
      const after = peaks.slice(at + 1, at + 9);
      return peak > loud && after.length === 8 && Math.max(...after) < silent
        ? [peak / Math.max(...peaks.slice(Math.max(0, at - 80), at + 1))]
        : [];
    });
  });
  return Math.max(0, ...ends);
}

/** Presses one after the other, none of which but 'louder' raises the level; their names. */
async function happen(presses: readonly Press[], chance: () => number): Promise<string[]> {
  const done: string[] = [];
  for (const { name, does } of presses) {
    const before = stage.player.world().level;
    await does(stage.player, stage.tap.contexts.at(-1));
    done.push(name);
    const rise = stage.player.world().level - before;
    expect(rise, done.join(", ")).toBeLessThanOrEqual(name === "louder" ? 3 : 0);
    await hesitate(chance);
  }
  return done;
}

describe("whatever is pressed and whatever happens", () => {
  test.for([1, 2, 3, 4])(
    "script %d: under the caps, without offset or step, never louder by itself",
    // Beside other work the browser itself may be late, and the recorder may lose a block.
    { timeout: 60_000, retry: 2 },
    async (seed) => {
      const { player, tap } = stage;
      const done = await happen(script(seed, 24), seeded(seed + 100));
      player.silence();
      await settled();
      const struck = done.some((name) => blows.some((blow) => blow.name === name));
      for (const stretch of stretches(tap.heard)) {
        const rate = stretch[0]?.context.sampleRate ?? 48_000;
        lawful(stretch, rate);
        // A context that is stopped from outside stops in the middle of a wave: nobody can ramp that.
        if (!struck) expect(steepestEnd(stretch, rate), done.join(", ")).toBeLessThan(0.5);
      }
      expect(soundingSpan(tap.heard)).toBeDefined();
      tap.heard.length = 0;
      await pause(150);
      expect(soundingSpan(tap.heard)).toBeUndefined();
    },
  );
});

describe("a broken generator", () => {
  const square = (n: number) => (n % 100 < 50 ? 1 : -1);
  test.for([
    ["no number", () => Number.NaN],
    ["infinity", () => Infinity],
    ["full-scale square", square],
    ["offset", () => 0.01],
    ["full scale", () => 1],
  ] as const)("that makes %s is not heard", async ([, wave]) => {
    vi.spyOn(signals.click, "fill").mockImplementation(({ left, right }) => {
      for (let n = 0; n < left.length; n++) left[n] = right[n] = wave(n);
    });
    expect(await stage.player.play("click", 1)).toEqual({ ended: "trouble", why: "refused" });
    await settled();
    expect(soundingSpan(stage.tap.heard)).toBeUndefined();
  });
});

describe("an output of another rate", () => {
  test.for([44_100, 96_000])("of %d Hz plays the same at the same level", async (sampleRate) => {
    const { AudioContext } = await import("standardized-audio-context");
    const newContext = () => new AudioContext({ latencyHint: "interactive", sampleRate });
    stage.player.close();
    stage.player = createPlayer(async () => ({ newContext }));
    const { left, right } = await stage.heardOf("left-ident", 1);
    expect(left).toBeCloseTo(-50, 0);
    expect(right).toBe(Number.NEGATIVE_INFINITY);
    expect(stage.player.rate()).toBe(sampleRate);
  });
});

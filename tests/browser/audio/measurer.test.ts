import { afterEach, describe, expect, test, vi } from "vitest";
import { createFakeRecorder } from "#audio/fake-recorder.ts";
import { createMeasurer } from "#audio/web-measurer.ts";
import { seeded } from "#core/units/random.ts";
import { pause, settled, soon } from "./stage.ts";
import { peakOf, soundingSpan, tapOutputs } from "./tap.ts";

/* What is played is heard at the browser's output; what comes back is made here, as the recorder would hand it over. */

const rate = 48_000;
const chance = seeded(1);
let tap = tapOutputs();
tap.remove();
const ready = () => {
  tap = tapOutputs();
  const recorder = createFakeRecorder();
  return { recorder, measurer: createMeasurer(recorder) };
};
type Ready = ReturnType<typeof ready>;
afterEach(async () => {
  vi.restoreAllMocks();
  await settled();
  tap.remove();
});

/** A block of noise on both channels, as it comes so long after the beginning. */
function hear({ recorder }: Ready, at: number, level = 0.001): void {
  const side = () => Float32Array.from({ length: 1024 }, () => level * (2 * chance() - 1));
  recorder.asked.at(-1)?.onBlock?.([side(), side()], at);
}

/** From the press until the signal sounds; the moment at which it does on the recorder's clock. */
async function begun(it: Ready): Promise<number> {
  it.recorder.open();
  let at = 0;
  const sounds = () => {
    at += 0.1;
    hear(it, at);
    return soundingSpan(tap.heard);
  };
  await expect.poll(sounds, { interval: 50, timeout: 5000 }).toBeDefined();
  return at;
}

describe("the measurer", () => {
  test("plays nothing before the input is open and its noise was heard", async () => {
    const it = ready();
    const measuring = it.measurer.measure();
    await pause(400);
    expect(it.measurer.world()).toMatchObject({ doing: "measuring", level: -50 });
    expect(soundingSpan(tap.heard)).toBeUndefined();
    it.recorder.open();
    hear(it, 0.1);
    hear(it, 0.25);
    await pause(400);
    expect(soundingSpan(tap.heard)).toBeUndefined();
    it.measurer.silence();
    expect(await measuring).toEqual({ ended: "stopped" });
    it.measurer.close();
  });

  test("records a second more than it plays, once, at the first level", {
    timeout: 40_000,
  }, async () => {
    const it = ready();
    const done: number[] = [];
    const measuring = it.measurer.measure({ onProgress: (told) => void done.push(told.done) });
    const at = await begun(it);
    // By the output's own clock, which a busy machine lets stand.
    const { first: from = 0 } = soundingSpan(tap.heard) ?? {};
    const heard = () => (tap.heard.at(-1)?.at ?? 0) - from;
    await expect.poll(heard, { interval: 250, timeout: 24_000 }).toBeGreaterThan(10);
    const capture = { channels: [new Float32Array(8), new Float32Array(8)], rate };
    it.recorder.hear(capture);
    for (let after = 9.6; after < 11; after += 0.2) hear(it, at + after);
    expect(await measuring).toMatchObject({ ended: "measured", capture, level: -50 });
    expect(it.recorder.asked).toHaveLength(1);
    expect(it.recorder.asked[0]).toMatchObject({ keep: true });
    const { first, last } = soundingSpan(tap.heard) ?? { first: 0, last: 0 };
    expect(last - first).toBeGreaterThan(9.3);
    expect(last - first).toBeLessThan(9.6);
    // The multitone peaks eight decibels above its level.
    expect(20 * Math.log10(peakOf(tap.heard))).toBeLessThan(-42);
    expect(done.at(-1)).toBeGreaterThan(10.4);
    expect(it.measurer.world()).toMatchObject({ doing: "nothing", trouble: undefined });
    it.measurer.close();
  });

  test("is silent within 20 ms of a press, and the input closed", { retry: 2 }, async () => {
    const it = ready();
    const watching = it.measurer.watch("flex-tones", { onBlock: () => {} });
    await begun(it);
    const [context] = tap.contexts;
    await pause(100);
    const pressed = context?.currentTime ?? 0;
    it.measurer.silence();
    expect(await watching).toEqual({ ended: "stopped" });
    expect(it.recorder.world().doing).toBe("nothing");
    await settled();
    const { last } = soundingSpan(tap.heard) ?? { last: 0 };
    expect(last).toBeGreaterThan(pressed);
    expect(last - pressed).toBeLessThan(soon);
    it.measurer.close();
  });

  test("whatever befalls the input ends the sound; it begins again at the first level", async () => {
    const it = ready();
    const watching = it.measurer.watch("flex-tones", { onBlock: () => {} });
    await begun(it);
    for (let n = 0; n < 3; n += 1) it.measurer.louder();
    expect(it.measurer.world().level).toBe(-41);
    it.recorder.fail("gone");
    expect(await watching).toEqual({ ended: "trouble", why: "gone" });
    expect(it.measurer.world()).toMatchObject({ doing: "nothing", trouble: "gone", level: -50 });
    await settled();
    tap.heard.length = 0;
    await settled();
    expect(soundingSpan(tap.heard)).toBeUndefined();
    it.measurer.close();
  });

  test("whatever befalls the output ends the recording", async () => {
    const it = ready();
    const watching = it.measurer.watch("multitone", { onBlock: () => {} });
    await begun(it);
    vi.spyOn(document, "hidden", "get").mockReturnValue(true);
    document.dispatchEvent(new Event("visibilitychange"));
    expect(await watching).toEqual({ ended: "trouble", why: "hidden" });
    expect(it.recorder.world().doing).toBe("nothing");
    it.measurer.close();
  });

  test("a second press ends the first; what cannot be played over and over is refused", async () => {
    const it = ready();
    const first = it.measurer.watch("flex-tones", { onBlock: () => {} });
    const second = it.measurer.watch("staircase", { onBlock: () => {} });
    expect(await first).toEqual({ ended: "stopped" });
    expect(await second).toEqual({ ended: "trouble", why: "refused" });
    it.measurer.close();
  });
});

/** What is found where the noise is at -65 dBFS and so much comes back, and the levels it was at. */
async function found(back: (level: number) => number) {
  const it = ready();
  const finding = it.measurer.findLevel();
  let at = await begun(it);
  const levels = new Set<number>();
  let ended: unknown;
  void finding.then((told) => {
    ended = told;
  });
  while (ended === undefined) {
    at += 0.1;
    const { level } = it.measurer.world();
    levels.add(level);
    // Evenly spread: its greatest is the square root of three times its root mean square.
    hear(it, at, Math.sqrt(3) * 10 ** (back(level) / 20));
    await pause(0);
  }
  it.measurer.close();
  return { ended, levels: [...levels] };
}

const steps = (from: number, to: number) =>
  Array.from(
    { length: Math.abs(to - from) / 3 + 1 },
    (_, n) => from + 3 * n * Math.sign(to - from),
  );

test.for([
  ["40 dB above the noise", "loud enough", -23, (level: number) => level],
  ["as far as the cap", "as loud as it may be", -20, (level: number) => level - 10],
  ["down again where it is too much", "loud enough", -68, (level: number) => level + 60],
  ["to the floor where it always is", "clipped", -70, () => 3],
] as const)("finding the level goes by steps of three: %s", async ([, what, level, back]) => {
  const told = await found(back);
  expect(told.ended).toEqual({ ended: "found", found: what, level });
  expect(told.levels).toEqual(level === -70 ? [...steps(-50, -68), -70] : steps(-50, level));
});

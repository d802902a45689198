import { describe, expect, test } from "vitest";
import type { Recording } from "./capture.ts";
import { compare } from "./compare.ts";
import { frameAt, programmeOf } from "./programme.ts";

/* The judge of what came out of a device must itself be able to find fault. */

const rate = 48_000;
const loop = programmeOf("rotation", 1, rate, { level: -20, loop: true });
const [before, count, after] = [1000, 2 * rate, 3000];
/** Silenced along ten milliseconds. */
const faded = rate / 100;
const step = 2 ** -15;

/** What a device would give, where frame n of it is the `at(n)`th of the programme, or silence. */
function recorded(at: (n: number) => number | undefined): Recording {
  const side = () => new Float32Array(before + count + after);
  const [left, right] = [side(), side()];
  for (let n = 0; n < count; n += 1) {
    const time = at(n);
    const frame = time === undefined ? undefined : frameAt(loop, time);
    const fade = Math.min(1, (count - n) / faded);
    if (frame === undefined) continue;
    left[before + n] = fade * (loop.left[frame] ?? 0);
    right[before + n] = fade * (loop.right[frame] ?? 0);
  }
  return { left, right, rate, chunks: [] };
}

const clean = () => recorded((n) => n);
/** Somewhere inside a turn. */
const place = rate + 3000;

describe("a recording compared with what was played", () => {
  test("that is as it should be has no fault", () => {
    const { slips, worst, stray, start, fade } = compare(clean(), loop);
    expect({ slips, stray, start }).toEqual({ slips: [], stray: 0, start: before });
    expect(worst).toBeLessThan(0.01);
    expect(Math.abs(fade - faded)).toBeLessThan(10);
  });

  const slipped: Readonly<
    Record<string, readonly [at: (n: number) => number | undefined, by: number]>
  > = {
    "one sample missing": [(n) => (n < place ? n : n + 1), -1],
    "one sample twice": [(n) => (n < place ? n : n - 1), 1],
    "a block missing": [(n) => (n < place ? n : n + 512), -512],
    "a block twice": [(n) => (n < place ? n : n - 512), 512],
    "a block of silence instead of what was due": [
      (n) => (n < place || n >= place + 512 ? n : undefined),
      0,
    ],
    "a block of silence put in": [
      (n) => (n >= place && n < place + 512 ? undefined : n - (n < place ? 0 : 512)),
      512,
    ],
  };
  test.for(Object.entries(slipped))("finds %s", ([, [at, by]]) => {
    const { slips } = compare(recorded(at), loop);
    expect(slips.length).toBe(1);
    expect(slips[0]?.by).toBe(by);
    expect(Math.abs((slips[0]?.at ?? 0) - place)).toBeLessThan(20);
  });

  const spoilt: Readonly<Record<string, (recording: Recording) => Recording>> = {
    "the sides exchanged": (one) => ({ ...one, left: one.right, right: one.left }),
    "one side a thousandth louder": (one) => ({ ...one, right: one.right.map((x) => 1.001 * x) }),
    "one side upside down": (one) => ({ ...one, left: one.left.map((x) => -x) }),
    "one sample a step off": (one) => ({
      ...one,
      left: one.left.map((x, n) => (n === before + place ? x + step : x)),
    }),
  };
  test.for(Object.entries(spoilt))("does not let pass: %s", ([, spoil]) => {
    const judged = () => compare(spoil(clean()), loop).slips.length;
    const faults = (() => {
      try {
        return judged();
      } catch {
        return 1; // not even its beginning is that of the programme
      }
    })();
    expect(faults).toBeGreaterThan(0);
  });

  test("tells of what sounds before it, and of what does not end", () => {
    const early = clean();
    early.left[10] = step;
    expect(compare(early, loop).stray).toBe(1);
    const late = clean();
    late.right[before + count + 2000] = 3 * step;
    expect(compare(late, loop).slips.length).toBeGreaterThan(0);
  });
});

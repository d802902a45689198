import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { EarMatrix } from "#audio/ear-matrix.ts";
import { buildGraph } from "#audio/graph.ts";
import { type Admitted, admit } from "#core/signals/admit.ts";
import { render } from "#core/signals/render.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { rendered } from "./offline.ts";

const rate = 48_000;
const cap = fromDecibels(-12);
/** Half a step of a 16-bit converter, full scale 1. */
const halfStep = 2 ** -16;

/** What arrives at the output when these samples are pushed past gate one. */
async function output(left: number[], right: number[], through?: EarMatrix, gain = 1) {
  const [l, r] = [Float32Array.from(left), Float32Array.from(right)];
  return play({ left: l, right: r, rate } as unknown as Admitted, through, gain);
}

const play = (sound: Admitted, through?: EarMatrix, gain = 1) =>
  rendered(sound.left.length, rate, (context) =>
    buildGraph(context, { sound, through, gain }).source.start(),
  );

const round = (samples: Iterable<number>) => [...samples].map((x) => Math.round(x * 1e5) / 1e5);

describe("the ear matrix", () => {
  const matrices: [name: string, matrix: EarMatrix, left: number[], right: number[]][] = [
    // what two impulses, 0.1 on the left and then 0.2 on the right, become
    ["good stereo", { ll: 1, lr: 0, rl: 0, rr: 1 }, [0.1, 0], [0, 0.2]],
    ["swapped", { ll: 0, lr: 1, rl: 1, rr: 0 }, [0, 0.2], [0.1, 0]],
    ["mono sum", { ll: 0.5, lr: 0.5, rl: 0.5, rr: 0.5 }, [0.05, 0.1], [0.05, 0.1]],
    ["right lost", { ll: 1, lr: 0, rl: 0, rr: 0 }, [0.1, 0], [0, 0]],
    ["right upside down", { ll: 1, lr: 0, rl: 0, rr: -1 }, [0.1, 0], [0, -0.2]],
    ["return lost", { ll: 0.5, lr: -0.5, rl: -0.5, rr: 0.5 }, [0.05, -0.1], [-0.05, 0.1]],
    ["four unlike", { ll: 0.1, lr: 0.2, rl: 0.3, rr: 0.4 }, [0.01, 0.04], [0.03, 0.08]],
  ];

  test.for(matrices)("%s", async ([, matrix, left, right]) => {
    const heard = await output([0.1, 0], [0, 0.2], matrix);
    expect([round(heard.left), round(heard.right)]).toEqual([left, right]);
  });

  test("left out, it is as good stereo to the last bit", async () => {
    const sound = admit(render("burst-pair", rate, 1));
    if ("refused" in sound) throw new Error(sound.refused);
    const plain = await play(sound);
    const identity = await play(sound, { ll: 1, lr: 0, rl: 0, rr: 1 });
    expect(plain.left.every((x, n) => x === identity.left[n])).toBe(true);
    expect(plain.right.every((x, n) => x === identity.right[n])).toBe(true);
  });

  test("a sound on one side leaves the other exactly zero", async () => {
    const sound = admit(render("left-ident", rate, 1));
    if ("refused" in sound) throw new Error(sound.refused);
    const heard = await play(sound);
    expect(heard.right.every((x) => x === 0)).toBe(true);
    expect(heard.left.some((x) => Math.abs(x) > 0.05)).toBe(true);
  });
});

describe("the cap", () => {
  const absurd = [1, -1, 0.26, 1e10, -1e38, 3e38];
  const capped = absurd.map((x) => Math.sign(x) * cap);

  test("holds exactly for absurd samples", async () => {
    const heard = await output(absurd, absurd.toReversed());
    expect(round(heard.left)).toEqual(round(capped));
    expect(round(heard.right)).toEqual(round(capped.toReversed()));
  });

  test("holds for infinity: samples too great for the gain before it", async () => {
    const heard = await output([1e30, -1e30, 0.1], [-1e30, 1e30, -0.1], undefined, 1e30);
    expect(round(heard.left)).toEqual(round([cap, -cap, cap]));
    expect(round(heard.right)).toEqual(round([-cap, cap, -cap]));
  });

  test("holds behind a matrix that is too much", async () => {
    const much = { ll: 1e30, lr: 1e30, rl: -1e30, rr: -1e30 };
    const heard = await output([0.2, -0.2, 1e30], [0.2, -0.2, 1e30], much);
    expect(round(heard.left)).toEqual(round([cap, -cap, cap]));
    expect(round(heard.right)).toEqual(round([-cap, cap, -cap]));
  });

  test("never lets through more, and never NaN, for any finite samples", async () => {
    const sample = fc.float({ noNaN: true, noDefaultInfinity: true });
    const samples = fc.array(sample, { minLength: 1, maxLength: 300 });
    await fc.assert(
      fc.asyncProperty(samples, async (left) => {
        const heard = await output(left, left);
        const over = [...heard.left, ...heard.right].filter((x) => !(Math.abs(x) <= cap + 1e-8));
        expect(over).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  test("below it all is linear to far less than half a 16-bit step", async () => {
    const inside = Array.from({ length: 4001 }, (_, n) => ((n - 2000) / 2000) * cap * 0.9999);
    const heard = await output(inside, inside.toReversed());
    const error = Math.max(...inside.map((x, n) => Math.abs((heard.left[n] ?? Infinity) - x)));
    expect(error).toBeLessThan(halfStep / 100);
  });

  test("is not met by any signal as loud as the level goes", async () => {
    const sound = admit(render("left-ident", rate, 1));
    if ("refused" in sound) throw new Error(sound.refused);
    const gain = fromDecibels(6);
    const heard = await play(sound, undefined, gain);
    const error = heard.left.map((x, n) => Math.abs(x - (sound.left[n] ?? Infinity) * gain));
    expect(Math.max(...error.subarray(0, 20_000))).toBeLessThan(halfStep / 100);
  });
});

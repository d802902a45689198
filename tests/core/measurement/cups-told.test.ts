import { expect, test } from "vitest";
import { surelyAnswered } from "#core/checks/cups-heard.ts";
import type { CupHeard } from "#core/measurement/cup.ts";
import { type CupsTold, cupsTold } from "#core/measurement/cups-told.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { oneChannel } from "#core/measurement/microphone.ts";
import { making } from "./made.ts";
import { noisy } from "./truth.ts";

/** A cup that gives so much of each, and bends it. */
function heard(left: number, right: number, bent = 0, ratio = 50): CupHeard {
  const gain = (_: number, programme: number) => ({ re: programme === 0 ? left : right, im: 0 });
  const { channels, rate } = noisy({ ...making, inputs: 1, gain }, ratio, 3);
  return measureReturn({ channels: channels.map((one) => one.map((x) => x + bent * x * x)), rate });
}

function told(
  left: CupHeard,
  right: CupHeard,
  levels: readonly [number, number] = [-50, -50],
): CupsTold {
  const [a, b] = levels;
  const result = cupsTold({ heard: left, level: a }, { heard: right, level: b });
  if ("refused" in result) throw new Error(JSON.stringify(result));
  return result;
}

const [left, right] = [heard(0.1, 0), heard(0, 0.1)];

test("a cup that was played louder is not louder for it", () => {
  expect(told(left, right).apart).toBeCloseTo(0, 1);
  const { apart, possible } = told(left, right, [-50, -44]);
  expect(apart).toBeCloseTo(-6, 1);
  expect(possible[0]?.[1][1]).toBeCloseTo((possible[0]?.[0][0] ?? 0) * 10 ** (-6 / 20), 3);
});

test("buzz is what stands clearly above the other cup's, out of the noise, and not what both have", () => {
  const rattle = heard(0, 0.1, 20);
  const { buzzing, distortion } = told(left, rattle);
  expect(buzzing).toBe(1);
  expect(distortion[1]?.value).toBeGreaterThan(0.01);
  expect(distortion[0]?.value).toBeLessThan(0.002);
  expect(told(heard(0.1, 0, 20), rattle).buzzing).toBeUndefined();
  expect(told(left, right).buzzing).toBeUndefined();
  expect(told(left, heard(0, 0.1, 0, 5)).buzzing).toBeUndefined();
});

test("of a dead cup neither loudness nor polarity nor buzz is told", () => {
  const dead = heard(0, 0);
  expect(told(dead, right)).toMatchObject({
    apart: undefined,
    polarity: undefined,
    buzzing: undefined,
  });
});

test("what hangs on a sign that was not told is not answered", () => {
  const whole = told(left, right);
  const answers = (possible: CupsTold["possible"]) =>
    surelyAnswered("position 1", possible).map(({ asked, results }) => [asked.check, results]);
  expect(answers(whole.possible)).toHaveLength(3);
  const [gains] = whole.possible;
  if (gains === undefined) throw new Error("nothing is possible");
  const [one, [a, b]] = gains;
  expect(answers([gains, [one, [-a, -b]]])).toEqual([
    ["left", [["left ear"]]],
    ["right", [["right ear"]]],
  ]);
});

test("a microphone is the louder one of two channels, one of two that are dead", () => {
  const [soft, loud] = [Float32Array.of(0.1, -0.1), Float32Array.of(0.2, 0.2)];
  expect(oneChannel({ channels: [soft, loud], rate: 48_000 }).channels).toEqual([loud]);
  expect(oneChannel({ channels: [loud, soft], rate: 48_000 }).channels).toEqual([loud]);
  expect(oneChannel({ channels: [soft], rate: 48_000 }).channels).toEqual([soft]);
});

import { describe, expect, test } from "vitest";
import { adviceFor, hissOf, levelOf, ruleOfThumb, withKnobs } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { type Feed, usualProgramme } from "#core/level/stages.ts";
import { knobFor, knobLevel } from "#core/level/taper.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import { standIn } from "#core/rig/stand-ins.ts";
import { feedIn, set } from "./feeds.ts";

const programme = usualProgramme;
const three = fromHeadphoneSocket("three stages", ["host", "guest"]);
const two = standIn({ feed: "belt pack", listeners: 1 });

/** The knobs by which the hiss is least, of all on a grid, that reach the level by the last and cut no peak. */
function searched(feed: Feed, wanted: number, steps: number) {
  const grid = Array.from({ length: steps + 1 }, (_, at) => at / steps);
  const turned = feed.stages.flatMap(({ knob }, at) => (knob === undefined ? [] : [at]));
  const [last = 0] = turned.slice(-1);
  const before = turned.slice(0, -1);
  let best = { hiss: Number.POSITIVE_INFINITY, knobs: [] as readonly (number | undefined)[] };
  const all = before.reduce<readonly (readonly number[])[]>(
    (some, _) => some.flatMap((one) => grid.slice(1).map((up) => [...one, up])),
    [[]],
  );
  for (const ups of all) {
    const knobs = feed.stages.map((_, at) => {
      const which = before.indexOf(at);
      return which < 0 ? 1 : (ups[which] ?? 1);
    });
    const level = levelOf(atEars(withKnobs(feed, knobs), programme));
    if (level < wanted) continue;
    const own = knobFor(wanted - level);
    if (knobLevel(own) < -40) continue;
    const whole = knobs.map((one, at) => (at === last ? own : one));
    const now = atEars(withKnobs(feed, whole), programme);
    if (now.tightest.headroom < -1e-6) continue;
    if (hissOf(now) < best.hiss) best = { hiss: hissOf(now), knobs: whole };
  }
  return best;
}

describe("where to set the knobs", () => {
  test.for([
    ["three stages", three, 70],
    ["three stages", three, 80],
    ["three stages", three, 92],
    ["a sensitive input", set(three, { amplifier: { "most input volts": 0.5 } }), 85],
    ["a noisy output", set(three, { amplifier: { "output noise": 80 } }), 85],
    ["a noisy middle", set(three, { mixer: { "phones: output noise": 200 } }), 85],
    ["a belt pack", two, 85],
  ] as const)("agrees with a search of every setting: %s", ([, rig, wanted]) => {
    const feed = feedIn(rig);
    const advice = adviceFor(feed, programme, wanted);
    const found = searched(feed, wanted, 60);
    expect(levelOf(advice.then)).toBeCloseTo(wanted, 6);
    expect(advice.then.tightest.headroom).toBeGreaterThan(-1e-6);
    // A grid misses the best by a step at most, and never betters it.
    expect(hissOf(advice.then)).toBeLessThan(found.hiss + 1e-6);
    expect(found.hiss - hissOf(advice.then)).toBeLessThan(0.6);
  });

  test("what cannot be reached is told, with nothing cut", () => {
    const advice = adviceFor(feedIn(straightIn), programme, 120);
    expect(advice.short).toBeGreaterThan(15);
    expect(levelOf(advice.then) + advice.short).toBeCloseTo(120, 6);
    expect(advice.then.tightest.headroom).toBeGreaterThan(-1e-6);
  });

  test("the rule of thumb reaches the level, with as much hiss or more", () => {
    const feed = feedIn(three);
    const thumb = atEars(withKnobs(feed, ruleOfThumb(feed, programme, 80)), programme);
    expect(levelOf(thumb)).toBeCloseTo(80, 1);
    expect(hissOf(thumb)).toBeGreaterThan(hissOf(adviceFor(feed, programme, 80).then));
  });
});

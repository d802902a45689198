import { expect, test } from "vitest";
import { adviceFor, hissOf, levelOf } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { standsOut } from "#core/level/audible.ts";
import { heardFrom, heardIn, loudnessOf, roomNames } from "#core/level/heard.ts";
import { insteadAt } from "#core/level/instead.ts";
import { spreadOf, unknownsOf } from "#core/level/spread.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { toneChangeAt } from "#core/level/tone-change.ts";
import { anyTold, reckoned, turned, wayTo } from "#core/level/way.ts";
import { build } from "#core/rig/rig.ts";
import { example, straightIn } from "#core/rig/rigs.ts";
import { startKeys } from "#core/rig/start-words.ts";
import { starts } from "#core/rig/starts.ts";
import { starts as words } from "#ui/words/english/starts.ts";
import { feedIn, set } from "./feeds.ts";

const rigs = [example, straightIn, ...starts.map(({ make }) => make(words))];
const wayIn = (rig: typeof example) => {
  const way = wayTo(build(rig), rig.positions[0]?.id ?? "");
  if (way === undefined) throw new Error("nothing feeds it");
  return way;
};

test.each(rigs)("$name: the same as the way itself, with its spread", (rig) => {
  const feed = feedIn(rig);
  const told = reckoned(wayIn(rig), usualProgramme);
  const all = unknownsOf(build(rig), feed);
  const direct = (out: typeof levelOf) =>
    spreadOf(feed, all, (one) => out(atEars(one, usualProgramme)));
  expect(told.level).toEqual(direct(levelOf));
  expect(told.hiss).toEqual(direct(hissOf));
});

test.each(rigs)("$name: a knob in the hand is a knob that is drawn so", (rig) => {
  const way = wayIn(rig);
  const knobs = way.feed.stages.map(({ knob }, at) => knob && 0.2 + 0.15 * at);
  const drawn = set(
    rig,
    Object.fromEntries(
      way.feed.stages.map(({ part, socket }, at) => [
        part,
        knobs[at] === undefined ? {} : { [`${socket}: knob`]: knobs[at] },
      ]),
    ),
  );
  const [hand, log] = [turned(way, knobs), wayIn(drawn)].map((one) =>
    reckoned(one, usualProgramme),
  );
  expect(hand?.level.low).toBeCloseTo(log?.level.low ?? 0, 9);
  expect(hand?.level.high).toBeCloseTo(log?.level.high ?? 0, 9);
  expect(hand?.hiss.value).toBeCloseTo(log?.hiss.value ?? 0, 9);
});

test("a sheet that does not say of what spreads the answer by the difference", () => {
  const with100 = (unit: string) =>
    reckoned(
      wayIn(
        set(straightIn, { "headphones 1": { ohms: 32, sensitivity: 100, "sensitivity in": unit } }),
      ),
      usualProgramme,
    ).level;
  const [said, unsaid] = [with100("dB/mW"), with100("dB")];
  expect(unsaid.value).toBeCloseTo(said.value, 9);
  expect(unsaid.high).toBeCloseTo(said.high, 9);
  // In 32 Ω a milliwatt is 14.95 dB below a volt.
  const others = said.value - said.low;
  expect(unsaid.value - unsaid.low).toBeCloseTo(Math.hypot(others, 14.95), 1);
});

test("in-ears have the ohms of their kind, and a tone that does not go beyond it", () => {
  const rig = starts[startKeys.indexOf("stage in-ears")]?.make(words);
  if (rig === undefined) throw new Error("there are no in-ears");
  const feed = feedIn(rig);
  expect(feed.worn.ohms).toBe(16);
  const tone = toneChangeAt(rig, feed);
  expect(tone?.source).toBeGreaterThan(10);
  expect(tone?.source).toBeLessThan(13);
  const most = set(rig, { [feed.worn.part]: { ohms: 290, "peak ohms": 5000 } });
  expect(toneChangeAt(most, feedIn(most))).toMatchObject({ peak: 5000, told: true });
});

test("whether any number is known of a way's boxes: neither headphones nor a knob are one", () => {
  expect(anyTold(feedIn(example))).toBe(false);
  const so = { laptop: { "phones: knob": 0.3 }, "headphones 1": { sensitivity: 100 } };
  expect(anyTold(feedIn(set(example, so)))).toBe(false);
  expect(anyTold(feedIn(set(example, { amplifier: { gain: 10 } })))).toBe(true);
});

test("hiss is heard in a room where it stands out there, and the words for loudness go up", () => {
  for (const room of roomNames) {
    const from = heardFrom(room);
    expect(standsOut(from + 0.01, room)).toBeGreaterThan(0);
    expect(standsOut(from - 0.01, room)).toBeLessThan(0);
  }
  expect(heardIn(heardFrom("silent") - 0.1)).toBeUndefined();
  expect(heardIn(heardFrom("silent") + 0.1)).toBe("silent");
  expect(heardIn(60)).toBe("stage before the show");
  const said = [Number.NEGATIVE_INFINITY, 40, 60, 75, 85, 92, 110].map(loudnessOf);
  expect(new Set(said).size).toBe(said.length);
});

test("twice the volts go 6.02 dB louder at the last box alone; other headphones are as if they were drawn", () => {
  // Nothing else is cut first.
  const rig = set(example, { amplifier: { "most volts": 0.5 } });
  const feed = feedIn(rig);
  const [now, bigger, ...others] = insteadAt(rig, feed, usualProgramme, 80);
  expect((bigger?.most ?? 0) - (now?.most ?? 0)).toBeCloseTo(6.02, 2);
  expect(others.map(({ what }) => what.is === "other headphones" && what.ohms)).toEqual([80, 250]);
  const drawn = feedIn(set(rig, { "headphones 1": { ohms: 250 } }));
  const advice = adviceFor(drawn, usualProgramme, 80);
  expect(others[1]?.hiss).toBeCloseTo(hissOf(advice.then), 9);
  expect(others[1]?.short).toBeCloseTo(advice.short, 9);
});

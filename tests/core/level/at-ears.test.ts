import { describe, expect, test } from "vitest";
import { hissOf, levelOf } from "#core/level/advice.ts";
import { atEars } from "#core/level/at-ears.ts";
import { rooms, standsOut } from "#core/level/audible.ts";
import type { FigureName } from "#core/level/figures.ts";
import { drawn, spreadOf, unknownsOf } from "#core/level/spread.ts";
import { type Feed, usualProgramme } from "#core/level/stages.ts";
import { knobFor, knobLevel, passedAt } from "#core/level/taper.ts";
import type { Told } from "#core/level/told.ts";
import { toneChangeAt } from "#core/level/tone-change.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket, straightIn } from "#core/rig/rigs.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { seeded } from "#core/units/random.ts";
import { feedIn, set } from "./feeds.ts";

const programme = usualProgramme;

const drawnIn = (name: FigureName, told: Told, normal: number): Told => ({
  ...told,
  typical: drawn(name, told, normal),
});

const short = { metres: 0.1, gauge: 16 };
const laptop = (ohms: number, output: number, more: Settings = {}) =>
  set(straightIn, {
    laptop: { "output ohms": output, "phones: most volts": 1, "phones: knob": 1, ...more },
    "headphones 1": { ...short, ohms, sensitivity: 100, "sensitivity in": "dB/mW" },
  });

describe("the worked examples (facts, section 5)", () => {
  test("100 dB/mW, 32 Ω, 1 V at full scale: a sine at full scale 114.95 dB, −18 dBFS 96.95", () => {
    const feed = feedIn(laptop(32, 0.1));
    // Contacts, a cord and a tenth of an ohm take a seventh of a decibel away.
    expect(levelOf(atEars(feed, { level: 0 }))).toBeCloseTo(114.95, 0);
    expect(Math.abs(levelOf(atEars(feed, { level: -18 })) - 96.95)).toBeLessThan(0.15);
  });

  // IEC 61938: 5 V behind 120 Ω.
  test.for([
    [32, 1.0526],
    [300, 3.5714],
    [600, 4.1667],
  ] as const)("5 V behind 120 Ω into %s Ω", ([ohms, volts]) => {
    const feed = feedIn(laptop(ohms, 120, { "phones: most volts": 5 }));
    const [ear] = atEars(feed, { level: 0 }).ears;
    expect(Math.abs(toDecibels(ear.volts / volts))).toBeLessThan(0.05);
  });

  test("behind 120 Ω a driver that rises from 300 to 500 Ω is 1.05 dB louder there", () => {
    const rig = set(laptop(300, 120), { "headphones 1": { "peak ohms": 500 } });
    const tone = toneChangeAt(rig, feedIn(rig));
    expect(Math.abs((tone?.bump ?? 0) - 1.054)).toBeLessThan(0.01);
    expect(tone).toMatchObject({ peak: 500, told: true });
    expect(tone?.source).toBeCloseTo(120, 0);
    expect(tone?.damping).toBeCloseTo(2.5, 1);
  });
});

describe("knobs", () => {
  test("half way up is a tenth; the inverse is one", () => {
    expect(passedAt(0.5)).toBeCloseTo(0.1, 9);
    for (const up of [0.01, 0.2, 0.5, 0.9, 1]) expect(knobFor(knobLevel(up))).toBeCloseTo(up, 9);
    expect([passedAt(0), passedAt(1), knobFor(20)]).toEqual([0, 1, 1]);
  });
});

const three = fromHeadphoneSocket("three stages", ["host", "guest"]);

describe("what is not known", () => {
  test("spreads the answer; what is told does not", () => {
    const level = (rig: Rig) => {
      const feed = feedIn(rig);
      return spreadOf(feed, unknownsOf(rig, feed), (one) => levelOf(atEars(one, programme)));
    };
    const wide = level(straightIn);
    const told = level(laptop(32, 10));
    expect(wide.high - wide.low).toBeGreaterThan(10);
    expect(wide.value).toBeGreaterThan(wide.low);
    expect(told.high - told.low).toBeLessThan(1e-6);
  });

  test("is spread about as far as draws of all of it at once are: eight in ten lie between", () => {
    const feed = feedIn(three);
    const unknowns = unknownsOf(three, feed).filter(({ name }) => name !== "ohms");
    const level = (one: Feed) => levelOf(atEars(one, programme));
    const { low, high } = spreadOf(feed, unknowns, level);
    const random = seeded(11);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const draws = Array.from({ length: 400 }, () => {
      const figures = (stage: Feed["stages"][number]) => ({
        ...stage.figures,
        "most volts": drawnIn("most volts", stage.figures["most volts"], normal()),
        gain: drawnIn("gain", stage.figures.gain, normal()),
      });
      const sensitivity = drawnIn("sensitivity", feed.worn.sensitivity, normal());
      return level({
        ...feed,
        stages: feed.stages.map((stage) => ({ ...stage, figures: figures(stage) })),
        worn: { ...feed.worn, sensitivity },
      });
    });
    const inside = draws.filter((one) => one >= low && one <= high).length / draws.length;
    expect(inside).toBeGreaterThan(0.72);
    expect(inside).toBeLessThan(0.9);
  });

  test("a sheet that does not say of what is told so", () => {
    const rig = set(laptop(300, 1), {
      "headphones 1": { sensitivity: 97, "sensitivity in": "dB" },
    });
    expect(feedIn(rig).worn.doubt).toBe("unit not said");
  });
});

describe("hiss", () => {
  test("is heard from some dB on in silence, and later in noise", () => {
    const from = (room: keyof typeof rooms) =>
      Array.from({ length: 90 }, (_, level) => level).find((level) => standsOut(level, room) > 0);
    const levels = (Object.keys(rooms) as (keyof typeof rooms)[]).map((room) => from(room) ?? 99);
    expect(levels).toEqual([...levels].sort((a, b) => a - b));
    expect(levels[0]).toBeGreaterThan(5);
    expect(levels[0]).toBeLessThan(12);
  });

  test("every gain and noise is one more thing heard: nothing is free", () => {
    const feed = feedIn(three);
    const hiss = hissOf(atEars(feed, programme));
    for (const part of ["laptop", "mixer", "amplifier"]) {
      const noisier = feed.stages.map((stage) =>
        stage.part === part
          ? {
              ...stage,
              figures: {
                ...stage.figures,
                "output noise": { ...stage.figures["output noise"], typical: 500 },
              },
            }
          : stage,
      );
      expect(hissOf(atEars({ ...feed, stages: noisier }, programme))).toBeGreaterThan(hiss + 1);
    }
  });
});

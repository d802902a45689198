import { describe, expect, test } from "vitest";
import { allowed, averageOf, doseOf, rules } from "#core/level/exposure.ts";
import { doubtOf, perMilliwattOf, perVolt, perVoltOf } from "#core/level/sensitivity.ts";
import { fromDbu, milliwattsOf, thermalNoise, toDbu, toDbv, voltsFor } from "#core/level/volts.ts";
import { thirds, weightedA } from "#core/level/weighting.ts";
import { toDecibels } from "#core/units/decibels.ts";

describe("sensitivity (facts, section 5)", () => {
  // https://www.spuriae.com/calculators/sensitivity-converter/: 32 Ω, 90 dB at 0.037 V, 103.69 dB/mW.
  test("the published example", () => {
    const ofOneVolt = 90 - toDecibels(0.037);
    expect(perMilliwattOf(ofOneVolt, 32)).toBeCloseTo(103.69, 2);
  });

  test.for([
    [100, 32, 114.95],
    [97, 300, 102.23],
    [91, 25, 107.02],
    [105, 62, 117.08],
  ] as const)("%s dB/mW in %s Ω is %s dB/V", ([perMilliwatt, ohms, volt]) => {
    expect(perVoltOf(perMilliwatt, ohms)).toBeCloseTo(volt, 2);
    expect(perMilliwattOf(perVoltOf(perMilliwatt, ohms), ohms)).toBeCloseTo(perMilliwatt, 9);
  });

  test("a sheet that does not say of what may mean either", () => {
    const { value, low, high } = perVolt(97, "dB", 300);
    expect([value, low, high].map((one) => Number(one.toFixed(2)))).toEqual([102.23, 97, 102.23]);
    expect(doubtOf(97, "dB", 300)).toBe("unit not said");
    expect(doubtOf(122, "dB/mW", 16)).toBe("too loud for a milliwatt");
    expect(doubtOf(90, "dB/V", 16)).toBe("too soft for a volt");
    expect(doubtOf(100, "dB/mW", 32)).toBeUndefined();
  });
});

describe("volts (facts, sections 3 and 5)", () => {
  test("+4 dBu is 1.22765 V, −10 dBV −7.7815 dBu, 0 dBV +2.2185 dBu", () => {
    expect(fromDbu(4)).toBeCloseTo(1.22765, 5);
    expect(toDbv(fromDbu(4))).toBeCloseTo(1.7815, 4);
    expect(toDbu(10 ** (-10 / 20))).toBeCloseTo(-7.7815, 4);
    expect(toDbu(1)).toBeCloseTo(2.2185, 4);
  });

  // IEC 61938: 5 V behind 120 Ω.
  test.for([
    [32, 1.0526, 34.63],
    [300, 3.5714, 42.52],
    [600, 4.1667, 28.94],
  ] as const)("5 V behind 120 Ω into %s Ω", ([ohms, volts, milliwatts]) => {
    const across = (5 * ohms) / (120 + ohms);
    expect(across).toBeCloseTo(volts, 4);
    expect(milliwattsOf(across, ohms)).toBeCloseTo(milliwatts, 2);
    expect(voltsFor(milliwattsOf(across, ohms), ohms)).toBeCloseTo(across, 9);
  });

  // EN 50332-2: 94 dB need at least 75 mV, and a player gives 150 mV at most; EN 62368-1: 85 dBA at 27 mV.
  test("150 mV make 100 dB where 75 mV make 94, and 27 mV 85", () => {
    const ofOneVolt = 94 - toDecibels(0.075);
    expect(ofOneVolt + toDecibels(0.15)).toBeCloseTo(100.02, 2);
    expect(ofOneVolt + toDecibels(0.027)).toBeCloseTo(85.13, 2);
  });

  // https://www.benchmarkmedia.com/appnotes-a/mmpnoise.html: −130.82 dBu at 300 K.
  test("the thermal noise of 150 Ω over 20 kHz", () => {
    const dbu = (kelvin: number) => toDbu(thermalNoise(150, 20_000, kelvin));
    expect(dbu(300)).toBeCloseTo(-130.82, 2);
    expect(dbu(290)).toBeCloseTo(-130.965, 3);
    expect(dbu(293.15)).toBeCloseTo(-130.918, 3);
    expect(toDbu(thermalNoise(200, 20_000, 300))).toBeCloseTo(-129.568, 2);
    expect(1e9 * thermalNoise(1000, 1, 290)).toBeCloseTo(4.002, 3);
  });
});

/** IEC 61672-1:2013, table 3, third octaves from 20 Hz to 20 kHz (from the copy in python-acoustics). */
const tableA = [
  -50.5, -44.7, -39.4, -34.6, -30.2, -26.2, -22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8,
  -3.2, -1.9, -0.8, 0, 0.6, 1.0, 1.2, 1.3, 1.2, 1.0, 0.5, -0.1, -1.1, -2.5, -4.3, -6.6, -9.3,
];

test("the A-weighting is within 0.05 dB of the standard's table at exact frequencies", () => {
  expect(thirds).toHaveLength(tableA.length);
  // The table is rounded to a tenth: to within a hair more than half of it.
  const off = thirds.map((third, at) => Math.abs(weightedA(third) - (tableA[at] ?? 0)));
  expect(Math.max(...off)).toBeLessThan(0.0505);
});

describe("exposure (facts, section 4)", () => {
  const minutes = (level: number) => allowed(rules.day, level) / 60;

  // NIOSH 98-126: 85 dBA for eight hours, 3 dB half of it.
  test.for([
    [82, 960],
    [85, 480],
    [88, 240],
    [91, 120],
    [94, 60],
    [97, 30],
    [100, 15],
  ] as const)("%s dBA may last %s minutes", ([level, time]) => {
    expect(minutes(level)).toBeCloseTo(time, 6);
  });

  test("94 dBA for two hours is twice a day's, as 88 dBA all day", () => {
    const dose = doseOf(rules.day, 94, 2 * 3600);
    expect(dose).toBeCloseTo(2, 9);
    expect(averageOf(rules.day, dose)).toBeCloseTo(88, 9);
  });

  const osha = rules["at work in the United States"];
  // 29 CFR 1910.95, table G-16.
  test.for([
    [90, 8],
    [95, 4],
    [100, 2],
    [105, 1],
    [110, 0.5],
    [115, 0.25],
  ] as const)("OSHA: %s dBA may last %s hours", ([level, time]) => {
    expect(allowed(osha, level) / 3600).toBeCloseTo(time, 9);
  });

  test("OSHA: 92 dBA for eight hours is 131.95 %, 200 % is 95 dBA", () => {
    expect(100 * doseOf(osha, 92, 8 * 3600)).toBeCloseTo(131.95, 2);
    expect(averageOf(osha, 2)).toBeCloseTo(95, 9);
  });

  // ITU-T H.870: 1.6 Pa²h a week, 0.506 for children; 100 dBA by energy 0.4 hours, by halving each 3 dB 0.394.
  test("a week's is 80 dBA for forty hours, 75 for children", () => {
    const energy = (level: number) => (20e-6 * 10 ** (level / 20)) ** 2 * 40;
    expect(energy(rules.week.level)).toBeCloseTo(1.6, 3);
    expect(energy(rules["children's week"].level)).toBeCloseTo(0.506, 3);
    expect(allowed(rules.week, 100) / 3600).toBeCloseTo(0.3937, 4);
  });
});

import { describe, expect, test } from "vitest";
import { earth } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { resistor } from "#core/parts/boxes.ts";
import { catalogue } from "#core/parts/catalogue.ts";
import { conductorOhms, diameterOf } from "#core/parts/wire.ts";
import { size } from "#core/units/complex.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Hertz, Ohms } from "#core/units/units.ts";
import { expectPrinted } from "./printed.ts";

const perKilometre = (gauge: number) => conductorOhms(gauge, 1000);

/** ASTM B258, as restated at www.liquisearch.com/american_wire_gauge/formula. */
describe("the diameter formula of ASTM B258", () => {
  test("its two fixed points: AWG 36 is 0.0050 in, AWG 0000 (-3) is 0.4600 in", () => {
    expect(diameterOf(36) / 25.4).toBeCloseTo(0.005, 12);
    expect(diameterOf(-3) / 25.4).toBeCloseTo(0.46, 12);
  });

  test("a step is 1.1229322", () => {
    expect(diameterOf(23) / diameterOf(24)).toBeCloseTo(1.1229322, 7);
  });

  test("six gauges double the diameter, nearly: 2.0050; ten gauges are ten times the area: 10.164", () => {
    expectPrinted([diameterOf(18) / diameterOf(24)], "2.0050", 0);
    expectPrinted([(diameterOf(14) / diameterOf(24)) ** 2], "10.164", 0);
  });

  test("AWG 12: 2.053 mm, 3.31 mm²", () => {
    const diameter = diameterOf(12);
    expectPrinted([diameter], "2.053", 0);
    expectPrinted([(Math.PI / 4) * diameter ** 2], "3.31", 0);
  });
});

/** The table of ASTM B258 as published at aionlinecalculator.com/wire-gauge-calculator.html. */
test.each([
  [10, "3.28"],
  [12, "5.21"],
  [14, "8.28"],
])("published ohms a kilometre: AWG %i, %s", (gauge, printed) => {
  // Its AWG 14 is 8.28 where formula and resistivity give 8.286: tables are made with rounded areas.
  expectPrinted([perKilometre(gauge)], printed, 0.002);
});

/** The formula with 100 % IACS: 58.0 MS/m at 20 °C, encyclopedia.datana.cloud, 'International Annealed Copper Standard'. */
test.each([
  [10, "3.277"],
  [12, "5.211"],
  [14, "8.286"],
  [20, "33.31"],
  [22, "52.96"],
  [24, "84.22"],
  [26, "133.9"],
  [28, "212.9"],
  [30, "338.6"],
])("computed ohms a kilometre: AWG %i, %s", (gauge, printed) => {
  expectPrinted([perKilometre(gauge)], printed, 0);
});

test("the standard itself: a wire of a metre and a gram is 0.15328 ohms", () => {
  // IEC 1913: of the density 8.89 g/cm³, so that its section is 1/8.89 mm².
  const area = (gauge: number) => (Math.PI / 4) * diameterOf(gauge) ** 2;
  expectPrinted([conductorOhms(24, 1) * area(24) * 8.89], "0.15328", 0);
});

test("3 m of AWG 28, out and back: 1.2775 ohms; at 40 °C 1.0786 times as much", () => {
  expectPrinted([2 * conductorOhms(28, 3)], "1.2775", 0);
  expectPrinted([conductorOhms(28, 3, 40) / conductorOhms(28, 3)], "1.0786", 0);
});

test("AWG 14 is 2.525 milliohms a foot; the handbook chapter calls a shield of 2.6 'like #14'", () => {
  expectPrinted([1000 * conductorOhms(14, 0.3048)], "2.525", 0);
});

test("the handbook's lead, 3 m with 0.252 ohms a conductor, is AWG 24", () => {
  expect(conductorOhms(24, 3)).toBeCloseTo(0.252, 2);
  expect(Math.abs(conductorOhms(23, 3) - 0.252)).toBeGreaterThan(0.01);
  expect(Math.abs(conductorOhms(25, 3) - 0.252)).toBeGreaterThan(0.01);
});

interface Cable {
  readonly metres: number;
  readonly gauge: number;
  readonly faradsPerMetre: number;
}

/** A source through a TS lead of ours into nothing, decibels. */
function through(source: Ohms, cable: Cable, at: Hertz): number {
  const { body } = catalogue["TS lead"].make({ ...cable });
  const circuit = [
    { kind: "source", name: "source", a: "near.tip", b: earth, ohms: source, drive: { in: 1 } },
    resistor("ground", "near.sleeve", earth, 1e-6),
    ...body,
  ] as const;
  const [volts] = solve(circuit, at, ["in"]);
  if (volts === undefined) throw new Error("no answer");
  const [tip, sleeve] = [volts("far.tip"), volts("far.sleeve")];
  return toDecibels(size({ re: tip.re - sleeve.re, im: tip.im - sleeve.im }));
}

const foot = 0.3048;

/**
 * Cable roll-off. 17 pF a foot, shield 2.6 milliohms a foot, 200 ft on a source of 1 kΩ, -3 dB near 50 kHz: handbook chapter by B. Whitlock,
 * issuhub.com/view/index?id=4743&pageIndex=1246; the other rows from f = 1 / (2πRC).
 */
test.each([
  [
    "1 kΩ, 200 ft of 17 pF/ft",
    1000,
    { metres: 200 * foot, gauge: 14, faradsPerMetre: 17e-12 / foot },
    46_810,
    "-3.01",
  ],
  [
    "10 kΩ, 10 m of 100 pF/m",
    10_000,
    { metres: 10, gauge: 24, faradsPerMetre: 100e-12 },
    15_920,
    "-3.01",
  ],
  [
    "100 Ω, 100 m of 100 pF/m",
    100,
    { metres: 100, gauge: 10, faradsPerMetre: 100e-12 },
    20_000,
    "-0.068",
  ],
] as const)("%s at its corner", (_, source, cable, at, decibels) => {
  // The wire's own ohms are in series with the source, and the source of the example has none.
  expectPrinted([through(source, cable, at)], decibels, 0.005);
  expect(through(source, cable, 20)).toBeCloseTo(0, 3);
});

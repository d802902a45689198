import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { measureReturn } from "#core/measurement/measured.ts";
import { createScan } from "#core/measurement/scan.ts";
import { seeded } from "#core/units/random.ts";
import { addNoise, captured, making, samplesOf } from "./made.ts";
import { measuredOf, sentLevel } from "./truth.ts";

const rate = 16_000;
const begins = [183.4, 405.05];
const signal = samplesOf({ ...making, rate, delay: 0, duration: 10, drift: 300 });
const slice = 20_011;

/** Two channels of noise as loud as the signal for some minutes, and the signal twice in it, slice by slice. */
function* recording(minutes: number): Generator<readonly Float32Array[]> {
  const random = seeded(12);
  const noise = addNoise(new Float64Array(1_000_003), sentLevel, random);
  for (let from = 0; from < minutes * 60 * rate; from += slice)
    yield signal.map((samples, input) =>
      Float32Array.from({ length: slice }, (_, n) => {
        const at = from + n;
        const own = begins.reduce(
          (sum, begin) => sum + (samples[at - Math.round(begin * rate)] ?? 0),
          0,
        );
        return own + (noise[(at + input * 500_000) % noise.length] ?? 0);
      }),
    );
}

test("the signal is found twice in ten minutes of noise, its clock 300 ppm off", () => {
  const scan = createScan(rate, 2);
  const kept: Float32Array[][] = begins.map(() => []);
  let from = 0;
  for (const block of recording(10)) {
    scan.push(block);
    for (const [at, begin] of begins.entries())
      if (from + slice > (begin - 2) * rate && from < (begin + 12) * rate) kept[at]?.push(...block);
    from += slice;
  }
  const found = scan.found();
  expect(found.length).toBe(2);
  for (const [at, begin] of begins.entries()) {
    const region = found[at] ?? { from: 0, to: 0 };
    expect(region.from / rate).toBeGreaterThan(begin - 0.8);
    expect(region.from / rate).toBeLessThan(begin);
    expect(region.to / rate).toBeGreaterThan(begin + 9.6);
    expect(region.to / rate).toBeLessThan(begin + 10.4);
  }
});

test("what is cut out can be measured", () => {
  const scan = createScan(rate, 1);
  const samples = Float32Array.from(
    { length: 30 * rate },
    (_, n) => signal[0]?.[n - 9 * rate] ?? 0,
  );
  for (let from = 0; from < samples.length; from += slice)
    scan.push([samples.subarray(from, from + slice)]);
  const [region = { from: 0, to: 0 }] = scan.found();
  const cut = captured(rate, [Float64Array.from(samples.subarray(region.from, region.to))]);
  const result = measuredOf(measureReturn(cut));
  expect(result.stretches).toBe("both");
  expect(region.from / rate + result.delay.value).toBeCloseTo(9, 5);
});

test("nothing is found in noise, in silence or in a tone", () => {
  const random = seeded(3);
  const sounds = [
    (length: number) => addNoise(new Float64Array(length), 0.1, random),
    (length: number) => new Float64Array(length),
    (length: number) => new Float64Array(length).map((_, n) => Math.sin((2 * Math.PI * n) / 160)),
  ];
  for (const sound of sounds) {
    const scan = createScan(rate, 1);
    for (let second = 0; second < 60; second += 1) scan.push([Float32Array.from(sound(rate))]);
    expect(scan.found()).toEqual([]);
  }
});

test("a stretch that has not ended is found so far, and one alone is cut for either", () => {
  const scan = createScan(rate, 1);
  const [samples = new Float64Array()] = signal;
  scan.push([Float32Array.from(samples.subarray(0, 4.5 * rate))]);
  const [open] = scan.found();
  expect(open?.from).toBe(0);
  expect(open?.to).toBe(4.5 * rate);
});

test("it keeps no more of a recording that is ten times as long", () => {
  const [noise = new Float64Array()] = [addNoise(new Float64Array(rate), 0.1, seeded(1))];
  const block = [Float32Array.from(noise)];
  const heldAfter = (seconds: number): number => {
    const scan = createScan(rate, 1);
    const before = held();
    for (let second = 0; second < seconds; second += 1) scan.push(block);
    const more = held() - before;
    expect(scan.found()).toEqual([]);
    return more;
  };
  heldAfter(10);
  expect(heldAfter(300) - heldAfter(30)).toBeLessThan(500_000); // the samples of one second are as many
});

/** Bytes that are held after what is not needed is thrown away. */
function held(): number {
  setFlagsFromString("--expose-gc");
  runInNewContext("gc")();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

import { describe, expect, test } from "vitest";
import { flexPlace } from "#core/measurement/flex-marks.ts";
import { FlexStrip } from "#core/measurement/flex-strip.ts";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import { fed, watched } from "./flex-found.ts";
import { gainsOf, leadFault } from "./flex-leads.ts";
import { streamed } from "./flex-streams.ts";

const healthy = gainsOf("load box");

test("the strip shows which level went where, in cells of 10 ms", () => {
  const faults = ["tip open", "sleeve open"].map((name, at) => ({
    at: 1.505 + 0.2 * at,
    lasts: 0.05,
    gains: gainsOf("load box", leadFault(name)),
  }));
  const watch = watched({ rate: 48_000, seconds: 2.5, healthy, faults, snr: 50 }, "load box");
  const { from, step, left, right, crosstalk } = watch.strip.live();
  expect([from, step]).toEqual([0, 0.01]);
  const at = (time: number) => Math.floor(time / step);
  expect(left.least[at(0.5)]).toBeNaN();
  expect(left.least[at(1.4)]).toBeCloseTo(1, 1);
  expect(left.most[at(1.4)]).toBeCloseTo(1, 1);
  expect(left.least[at(1.535)]).toBeLessThan(0.02);
  expect(right.least[at(1.535)]).toBeCloseTo(1, 1);
  expect(crosstalk.least[at(1.735)]).toBeCloseTo(-0.5, 1);
  expect(left.least[at(1.735)]).toBeCloseTo(0.5, 1);
});

describe("a run of an hour and more", () => {
  const strip = new FlexStrip(60);
  const hour = 2000 * 4000;
  for (let hop = 0; hop < hour; hop += 20) {
    const dip = hop === 3_000_000 ? 0.25 : 1;
    strip.add(hop, dip, 1 + hop / hour, -0.125);
  }

  test("the last minute is whole, and the oldest of it is a minute old", () => {
    const { from, left, right, step } = strip.live();
    expect(left.least).toHaveLength(6000);
    expect(from + left.least.length * step).toBeCloseTo(hour / 2000 - 0.01, 6);
    expect(right.most[0]).toBeCloseTo(1 + from / 4000, 4);
  });

  test("all of it has 2048 cells or fewer, and one bad cell still shows", () => {
    const { from, step, left, right, crosstalk } = strip.whole();
    expect([from, step]).toEqual([0, 2.56]);
    expect(left.least).toHaveLength(Math.ceil(4000 / 2.56));
    expect([...left.least].indexOf(0.25)).toBe(Math.floor(1500 / 2.56));
    expect(left.least.filter((one) => one < 1)).toHaveLength(1);
    expect(right.most[0]).toBeCloseTo(1 + 2.55 / 4000, 4);
    expect(crosstalk.most.every((one) => one === -0.125)).toBe(true);
  });
});

describe("marks", () => {
  const plug1 = { at: 10, plug: 1 } as const;
  const plug2 = { at: 20, plug: 2 } as const;
  const back = { at: 40, plug: 1 } as const;
  const marks = [back, plug1, plug2];

  test("between the plugs in proportion to time, whichever way the hand goes", () => {
    expect(flexPlace({ at: 12.5 }, marks)).toEqual({
      before: { mark: plug1, seconds: 2.5 },
      after: { mark: plug2, seconds: 7.5 },
      along: 0.25,
    });
    expect(flexPlace({ at: 35 }, marks).along).toBeCloseTo(0.25, 9);
    expect(flexPlace({ at: 20 }, marks).along).toBe(1);
  });

  test("with marks on one side alone, or of one plug twice, no place", () => {
    expect(flexPlace({ at: 5 }, marks)).toEqual({ after: { mark: plug1, seconds: 5 } });
    expect(flexPlace({ at: 50 }, marks)).toEqual({ before: { mark: back, seconds: 10 } });
    expect(flexPlace({ at: 12 }, [plug1, { at: 14, plug: 1 }]).along).toBeUndefined();
    expect(flexPlace({ at: 12 }, [])).toEqual({});
  });

  test("a watch keeps them, with the time of what was taken last", () => {
    const faults = [{ at: 2, lasts: 0.02, gains: gainsOf("load box", leadFault("tip open")) }];
    const samples = streamed({ rate: 48_000, seconds: 3, healthy, faults, snr: 40 });
    const watch = new FlexWatch({ rate: 48_000, channels: 2, returns: "load box" });
    fed(
      watch,
      samples.map((channel) => channel.subarray(0, 72_000)),
    );
    watch.mark(1);
    fed(
      watch,
      samples.map((channel) => channel.subarray(72_000)),
    );
    watch.mark(2, 2.5);
    const { marks: kept, events } = watch.state;
    expect(kept[0]?.at).toBeCloseTo(1.5, 2);
    const [event] = events;
    expect(event && flexPlace(event, kept).along).toBeCloseTo(0.5, 1);
  });
});

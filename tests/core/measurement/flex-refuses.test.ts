import { describe, expect, test } from "vitest";
import type { FlexReturn } from "#core/measurement/flex-names.ts";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import { fed, seen } from "./flex-found.ts";
import { type Gains, gainsOf, leadFault } from "./flex-leads.ts";
import { type Stream, streamed } from "./flex-streams.ts";

const rate = 48_000;
const healthy = gainsOf("joined");
const none: Gains = gainsOf("joined").map((row) => row.map(() => ({ re: 0, im: 0 })));
const broken = (name: string, returns: FlexReturn = "joined") => [
  { at: 1.5, lasts: 0.02, gains: gainsOf(returns, leadFault(name)) },
];
const stream: Stream = { rate, seconds: 2.2, healthy, snr: 40 };

/** What a watch makes of these channels. */
const of = (samples: readonly Float32Array[], returns: FlexReturn = "joined") =>
  fed(new FlexWatch({ rate, channels: samples.length as 1 | 2, returns }), samples).state;

const exchanged = ([left, right]: readonly Float32Array[]) =>
  [right, left].filter((one) => one !== undefined);
const sum = ([left, right]: readonly Float32Array[]): Float32Array =>
  (left ?? new Float32Array()).map((one, at) => (one + (right?.[at] ?? 0)) / 2);

describe("nothing to watch", () => {
  test("silence, and noise alone", () => {
    const silent = [0, 1].map(() => new Float32Array(2 * rate));
    expect(of(silent).status).toEqual({ status: "learning", refused: "no signal" });
    const beside = (channel: number, time: number) => 0.01 * Math.sin(9e5 * time ** 2 + channel);
    const other = streamed({ rate, seconds: 2, healthy: none, beside });
    expect(of(other).status).toEqual({ status: "learning", refused: "no signal" });
  });

  test("a signal that comes later is watched from then on", () => {
    const lost = { at: -1, lasts: 2.3, gains: none };
    const state = seen(
      {
        ...stream,
        seconds: 5,
        faults: [
          lost,
          {
            ...broken("tip open")[0],
            at: 4,
            lasts: 0.01,
            gains: gainsOf("joined", leadFault("tip open")),
          },
        ],
      },
      "joined",
    );
    expect(state.status.status).toBe("watching");
    expect(state.events).toMatchObject([{ fault: "tip" }]);
  });

  test("cut off at full scale", () => {
    const loud = streamed({ ...stream, level: 30 }).map((channel) =>
      channel.map((one) => Math.max(-1, Math.min(1, one))),
    );
    expect(of(loud).status).toEqual({ status: "learning", refused: "clipped" });
  });

  test("cut off later: blind as long as it is", () => {
    const samples = streamed({ ...stream, seconds: 5 });
    samples[0]?.fill(1, 2.2 * rate, 2.3 * rate);
    const { blind, status } = of(samples);
    expect(blind).toEqual({ clipped: 1 });
    expect(status.status).toBe("watching");
  });

  test("noise: refused, and named, without events", () => {
    const { status, events, blind } = seen({ ...stream, seconds: 6, snr: 0 }, "joined");
    expect(status).toMatchObject({ status: "blind", refused: "too noisy to see 2 ms" });
    expect(events).toEqual([]);
    expect(blind["too noisy to see 2 ms"]).toBeGreaterThan(4.5);
  });

  test("noise that goes away: watched again", () => {
    const beside = (channel: number, time: number) =>
      time > 2 && time < 3 ? 0.2 * Math.sin(1e6 * (time * 7.3 + channel) ** 2) : 0;
    const faults = [{ at: 6, lasts: 0.004, gains: gainsOf("joined", leadFault("tip open")) }];
    const state = seen({ ...stream, seconds: 6.5, beside, faults }, "joined");
    expect(state.blind["too noisy to see 2 ms"]).toBeGreaterThan(0.8);
    expect(state.status.status).toBe("watching");
    expect(state.events).toMatchObject([{ fault: "tip" }]);
  });

  test("both sides on both channels, not the same: a lead that is mono from the start", () => {
    const mono = streamed({
      ...stream,
      healthy: gainsOf("joined", leadFault("tip and ring shorted")),
    });
    expect(of(mono).status).toEqual({ status: "learning", refused: "sides mixed" });
  });
});

describe("less to see", () => {
  test("sides exchanged: the conductors are those of the output's plug", () => {
    const samples = exchanged(streamed({ ...stream, faults: broken("tip open") }));
    const { status, events } = of(samples);
    expect(status).toEqual({ status: "watching", limits: ["sleeve"] });
    expect(events).toMatchObject([{ fault: "tip" }]);
  });

  test.each([
    ["left only", 0, "tip open", "tip"],
    ["left only", 0, "tip and ring shorted", "tip to ring"],
    ["right only", 1, "ring open", "ring"],
    ["right only", 1, "tip and ring shorted", "tip to ring"],
  ] as const)("%s: %i, %s", (limit, channel, name, fault) => {
    const samples = streamed({ ...stream, faults: broken(name) });
    const one = [samples[channel] ?? new Float32Array()];
    const silent = new Float32Array(one[0]?.length ?? 0);
    for (const input of [one, channel === 0 ? [...one, silent] : [silent, ...one]]) {
      const { status, events } = of(input);
      expect(status).toEqual({ status: "watching", limits: [limit, "sleeve"] });
      expect(events).toMatchObject([{ fault }]);
      expect(events[0]?.duration).toBeCloseTo(0.02, 3);
    }
  });

  test("left only: what happens to the right alone is not seen", () => {
    const [left = new Float32Array()] = streamed({ ...stream, faults: broken("ring open") });
    expect(of([left]).events).toEqual([]);
  });

  test("one input behind a load box: the other side comes too, by sleeve or short", () => {
    for (const name of ["sleeve open", "tip and ring shorted"]) {
      const lead = { ...stream, healthy: gainsOf("load box"), faults: broken(name, "load box") };
      const { status, events } = of(streamed(lead).slice(0, 1), "load box");
      expect(status).toEqual({ status: "watching", limits: ["left only"] });
      expect(events).toMatchObject([{ fault: "mixed", cause: "open or short" }]);
    }
  });

  test.each([1, 2])("both sides in one input, handed over on %i channels", (channels) => {
    for (const [name, fault] of [
      ["tip open", "tip"],
      ["ring open", "ring"],
    ] as const) {
      const one = sum(streamed({ ...stream, faults: broken(name) }));
      const { status, events } = of(Array.from({ length: channels }, () => one));
      expect(status).toEqual({ status: "watching", limits: ["one input", "sleeve"] });
      expect(events).toMatchObject([{ fault }]);
    }
  });

  test("inputs set 12 dB apart", () => {
    const samples = streamed({ ...stream, faults: broken("tip and ring shorted") });
    const apart = samples.map((channel, at) => (at === 0 ? channel : channel.map((x) => x / 4)));
    expect(of(apart).events).toMatchObject([{ fault: "tip to ring", breaks: 1 }]);
  });
});

import { describe, expect, test } from "vitest";
import { atEars } from "#core/level/at-ears.ts";
import { audioBand } from "#core/level/volts.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket, fromMainPair, straightIn } from "#core/rig/rigs.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import { feedIn, set } from "#tests/core/level/feeds.ts";
import { installed } from "./ngspice.ts";
import { simulatedNoise } from "./noise-deck.ts";

const here = installed();

const three = fromHeadphoneSocket("three stages", ["host", "guest"]);
const ways: readonly (readonly [string, Rig])[] = [
  ["three stages, knobs half way", three],
  ["from the main pair by balanced outputs", fromMainPair("main pair", ["host", "guest"])],
  ["one stage", straightIn],
  [
    "three stages so quiet that the wires are heard: thermal noise",
    set(three, {
      laptop: { "phones: input noise": 0.01, "phones: output noise": 0.01 },
      mixer: { "phones: input noise": 0.01, "phones: output noise": 0.01, "output ohms": 1000 },
      amplifier: { "input noise": 0.01, "output noise": 0.01, "input ohms": 100_000, gain: 40 },
      "headphones 1": { ohms: 600 },
    }),
  ],
  [
    "hot early, soft late",
    set(three, {
      laptop: { "phones: knob": 1 },
      mixer: { "phones: knob": 0.9 },
      amplifier: { "output 1: knob": 0.2 },
    }),
  ],
  [
    "soft early, hot late",
    set(three, {
      laptop: { "phones: knob": 0.3 },
      mixer: { "phones: knob": 0.4 },
      amplifier: { "output 1: knob": 1 },
    }),
  ],
];

describe.runIf(here || process.env.CI !== undefined)(
  "ngspice says the same of level and noise:",
  () => {
    test.for(ways)("%s", ([, rig]) => {
      const feed = feedIn(rig);
      const { gain, noise } = simulatedNoise(build(rig), feed);
      const [{ volts, level, hiss }] = atEars(feed, { level: 0 }).ears;
      const sent = feed.stages[0]?.figures["most volts"].typical ?? 0;
      const ours = { gain: volts / sent, noise: volts * fromDecibels(hiss - level) };
      const off = [
        toDecibels(ours.gain / gain),
        toDecibels(ours.noise / Math.sqrt(audioBand) / noise),
      ];
      console.info(
        `${rig.name}: level ${off[0]?.toFixed(4)} dB, noise ${off[1]?.toFixed(4)} dB off`,
      );
      for (const one of off) expect(Math.abs(one)).toBeLessThan(0.1);
    });
  },
);

if (!here && process.env.CI === undefined)
  console.warn("ngspice is not installed: noise was compared with no outside solver");

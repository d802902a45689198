import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { promptFile } from "#cli/prompt-files.ts";
import { measured } from "#core/hearing/measure.ts";
import { joined } from "#core/prompts/joined.ts";
import {
  gapsOf,
  highestOutput,
  highestPosition,
  type Prompt,
  wordsOf,
} from "#core/prompts/prompt.ts";
import { routed } from "#core/prompts/routed.ts";
import { type SpokenTag, speaking, spokenTags } from "#core/prompts/speaking.ts";
import { phrases } from "#core/prompts/words.ts";
import { admit } from "#core/signals/admit.ts";
import { render } from "#core/signals/render.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { everyOther } from "#tests/support/long.ts";
import { promptAt, promptPath, promptRead } from "#tests/support/prompt-file.ts";

const rate = 16_000;

const has = (program: string): boolean => spawnSync(program, ["--version"]).error === undefined;
const ci = process.env.CI !== undefined;
const heard = (has("sox") && has("ffmpeg")) || ci;
const made = (has("sox") && has("espeak-ng")) || ci;

function said(program: string, ...args: readonly string[]): string {
  const { stdout, stderr, status } = spawnSync(program, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${program} ${args.join(" ")}: ${stderr}`);
  return `${stdout}${stderr}`;
}

const meanOf = (values: Float32Array): number => values.reduce((a, b) => a + b, 0) / values.length;
const rmsOf = (samples: Float32Array): number =>
  toDecibels(Math.sqrt(meanOf(samples.map((x) => x * x))));
const peakOf = (samples: Float32Array): number =>
  samples.reduce((a, x) => Math.max(a, Math.abs(x)), 0);

/** Every word of every language. */
const everyWord = spokenTags.flatMap((tag) =>
  speaking[tag].words.map((word) => [tag, word] as const),
);

/** Bytes of all files of a language together: numbers are longer words in German. */
const most = { en: 700_000, de: 950_000 };

describe("the shipped files", () => {
  test.for(spokenTags)("every word of %s has one, and none is left over", (tag) => {
    const expected = speaking[tag].words.map((word) => `${word}.wav`).sort();
    expect(readdirSync(`public/prompts/${tag}`).sort()).toEqual(expected);
  });

  test.for(spokenTags)("all of %s weigh less than they may", (tag) => {
    const weights = speaking[tag].words.map((word) => statSync(promptPath(tag, word)).size);
    expect(weights.reduce((a, b) => a + b, 0)).toBeLessThan(most[tag]);
  });

  test.for(everyWord)(
    "%s %s: mono, 16 kHz, 16 bit, trimmed, level, no offset, no click",
    ([tag, word]) => {
      const { format, samples } = promptRead(tag, word);
      expect(format).toMatchObject({
        audioFormat: 1,
        numChannels: 1,
        sampleRate: rate,
        bitsPerSample: 16,
      });
      const seconds = samples.length / rate;
      expect(seconds).toBeGreaterThan(0.15);
      expect(seconds).toBeLessThan(3);
      const peak = peakOf(samples);
      expect(peak).toBeLessThan(0.6);
      expect(Math.abs(rmsOf(samples) + 18)).toBeLessThan(0.1);
      expect(Math.abs(meanOf(samples))).toBeLessThan(1e-3);
      const silent = (sample: number) => Math.abs(sample) < peak / 200;
      expect(samples.findIndex((x) => !silent(x))).toBeLessThan(0.03 * rate);
      expect(samples.length - samples.findLastIndex((x) => !silent(x))).toBeLessThan(0.03 * rate);
      for (const end of [samples[0], samples.at(-1)]) expect(Math.abs(end ?? 1)).toBeLessThan(1e-3);
    },
  );
});

/** Every sentence, every position, and every output once on each place. */
const prompts: readonly Prompt[] = [
  ...phrases.map((prompt): Prompt => ({ prompt })),
  ...Array.from(
    { length: highestPosition },
    (_, n): Prompt => ({ prompt: "position", number: n + 1 }),
  ),
  ...Array.from(
    { length: highestOutput },
    (_, n): Prompt => ({
      prompt: "outputs",
      numbers: [n + 1, highestOutput - n],
    }),
  ),
];

const spoken = (tag: SpokenTag, prompt: Prompt, at: number): Float32Array => {
  const words = wordsOf(speaking[tag], prompt);
  return joined(
    words.map((word) => promptAt(tag, word, at)),
    at,
    gapsOf(words),
  );
};

describe("every prompt", () => {
  test.for([
    ["en", 44_100],
    ["en", 48_000],
    ["en", 96_000],
    ["de", 48_000],
  ] as const)("in %s passes gate one at %i Hz, as loud as a knock", ([tag, at]) => {
    const knock = measured(render("left-ident", at, 1).left, at).level;
    for (const prompt of prompts) {
      const samples = spoken(tag, prompt, at);
      const name = JSON.stringify(prompt);
      expect(admit(routed(samples, at, "either ear")), name).not.toHaveProperty("refused");
      const louder = toDecibels(measured(samples, at).level / knock);
      expect(louder, name).toBeGreaterThan(0);
      expect(louder, name).toBeLessThan(4.1);
    }
  });
});

describe.runIf(heard)("an outside judge reads the files", () => {
  test.for(everyOther(everyWord, 6))(
    "sox and ffmpeg: %s %s has the length, level and offset we read",
    ([tag, word]) => {
      const path = promptPath(tag, word);
      const { samples } = promptRead(tag, word);
      const stats = said("sox", path, "-n", "stats");
      const row = (name: string) =>
        Number(stats.match(new RegExp(`^${name}\\s+(-?[\\d.]+)\\s*$`, "m"))?.[1]);
      expect(Math.abs(row("RMS lev dB") - rmsOf(samples))).toBeLessThan(0.02);
      expect(Math.abs(row("Pk lev dB") - toDecibels(peakOf(samples)))).toBeLessThan(0.02);
      expect(Math.abs(row("DC offset"))).toBeLessThan(1e-3);
      const probed = said("ffmpeg", "-hide_banner", "-i", path, "-f", "null", "-");
      expect(probed).toContain("pcm_s16le");
      expect(probed).toMatch(/16000 Hz, (?:1 channels|mono)/);
      const [, minutes, seconds] = probed.match(/Duration: 00:(\d\d):([\d.]+)/) ?? [];
      const length = 60 * Number(minutes) + Number(seconds);
      expect(Math.abs(length - samples.length / rate)).toBeLessThan(0.011);
    },
  );

  test("sox: nothing of a file is below the high-pass", () => {
    for (const [tag, word] of everyWord) {
      const low = said("sox", promptPath(tag, word), "-n", "sinc", "-40", "stats");
      const [, level] = low.match(/^RMS lev dB\s+(-?[\d.]+|-inf)/m) ?? [];
      // The onset of a short word reaches as deep as this, the deeper German voice a little more; a rumble would be 20 dB above.
      expect(Number(level === "-inf" ? -200 : level), word).toBeLessThan(-45);
    }
  });
});

/** What made the files that are shipped; other versions may speak a little otherwise. */
const makers = /eSpeak NG text-to-speech: 1\.51\b[\s\S]*SoX v14\.4\.2/;

describe.runIf(made)("made anew", () => {
  const sameMakers =
    process.arch === "x64" &&
    makers.test(said("espeak-ng", "--version") + said("sox", "--version"));

  // By the same versions byte for byte; by others, the length within a tenth.
  test.for([
    ["en", "left"],
    ["en", "seventeen"],
    ["en", "position"],
    ["en", "raise-if-nothing"],
    ["de", "two-and"],
    ["de", "thirty"],
    ["de", "point-to-where"],
  ] as const)("%s %s", ([tag, word]) => {
    const shipped = readFileSync(promptPath(tag, word));
    const again = promptFile(tag, word);
    expect(Math.abs(again.length / shipped.length - 1)).toBeLessThan(0.1);
    if (sameMakers) expect(Buffer.compare(shipped, again)).toBe(0);
  });
});

if (!heard || !made)
  console.warn(
    "espeak-ng, sox or ffmpeg is not installed: the prompts were not all judged or made anew",
  );

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { analyseRun } from "#cli/analyse-run.ts";
import { openSlices } from "#cli/file-slices.ts";
import { measurementFormat } from "#cli/measurement-format.ts";
import { multitone } from "#core/signals/multitone.ts";
import { renderSignal } from "#core/signals/render.ts";
import { seeded } from "#core/units/random.ts";
import { wavOf } from "#pack/wav.ts";
import { said } from "#tests/reference/outside-programs.ts";
import { analyse, byScript, folder } from "./command.ts";

const files = folder();
afterAll(files.remove);

const rate = 48_000;
const run = (...args: readonly string[]) => analyseRun(args, openSlices);
const schema = () =>
  z.fromJSONSchema(JSON.parse(readFileSync("public/measurement.schema.json", "utf8")));

/** What a desk recorded: a second of quiet, the left 6 dB down, the right upside down, some hiss. */
function recorded() {
  const sound = renderSignal(multitone, rate, 1);
  const random = seeded(2);
  const through = (samples: Float32Array, gain: number) =>
    Float32Array.from(
      { length: samples.length + 2 * rate },
      (_, n) => gain * (samples[n - rate] ?? 0) + 1e-4 * (random() - 0.5),
    );
  return wavOf({ left: through(sound.left, 0.5), right: through(sound.right, -1), rate });
}

let good = "";
beforeAll(() => {
  good = files.write("evening.wav", recorded());
});

describe("analyse", () => {
  test("prints what came through what, as its schema has it", async () => {
    const shares: number[] = [];
    const { code, out, err } = await analyseRun([good], openSlices, (one) => shares.push(one));
    expect([code, err]).toEqual([0, ""]);
    const read = JSON.parse(out);
    expect(measurementFormat.safeParse(read).error?.issues).toBeUndefined();
    expect(schema().safeParse(read).error?.issues).toBeUndefined();
    expect(read).toMatchObject({ found: 1, warnings: [], file: { coding: "signed 24", rate } });
    const [{ inputs, delay, from, channels }] = read.playings;
    expect(channels).toEqual([1, 2]);
    expect(inputs[0]).toMatchObject({
      channel: 1,
      left: { carried: true, polarity: 1 },
      right: { carried: false },
    });
    expect(inputs[1]).toMatchObject({
      channel: 2,
      right: { carried: true, polarity: -1 },
      left: { carried: false },
    });
    expect(Math.abs(inputs[0].left.level + 6.02)).toBeLessThan(0.02);
    expect(Math.abs(inputs[1].right.level)).toBeLessThan(0.02);
    expect(Math.abs(from + delay.value - 1)).toBeLessThan(1e-6);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });

  test("says the same for people", async () => {
    const { code, out } = await run("--text", good);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^signed 24 bits, 2 channels, 48000 Hz, 11\.60 s\nThe signal is in this recording once\.\n/,
    );
    expect(out).toMatch(/left programme: −6\.0\d ± 0\.0\d dB, as sent/);
    expect(out).toMatch(/right programme: −?0\.0\d ± 0\.0\d dB, upside down/);
    expect(out).toMatch(/The signal begins at 1\.000000 ± 0\.00000\d s/);
    expect(out).not.toMatch(/[-−]0\.0+ /);
  });

  test("leaves out what a channel of zeros has not", async () => {
    const { left, right } = renderSignal(multitone, rate, 1);
    const dead = wavOf({ left, right: right.map(() => 0), rate });
    const { out } = await run(files.write("dead.wav", dead));
    const [{ inputs }] = JSON.parse(out).playings;
    expect(inputs[0].left).toMatchObject({ carried: true, polarity: 1 });
    expect(inputs[1]).toEqual({ channel: 2, left: { carried: false }, right: { carried: false } });
    expect(schema().safeParse(JSON.parse(out)).success).toBe(true);
  });

  test("finds nothing in other sounds, and says so", async () => {
    const silence = new Float32Array(rate);
    const { code, out } = await run(
      files.write("silence.wav", wavOf({ left: silence, right: silence, rate })),
    );
    expect([code, JSON.parse(out)]).toMatchObject([0, { found: 0, playings: [] }]);
    expect(JSON.parse(out).words).toContain("not in this recording");
  });

  test("warns of a file that was cut off, and measures what is there", async () => {
    const bytes = readFileSync(good);
    const { out } = await run(files.write("cut.wav", bytes.subarray(0, bytes.length - 6 * rate)));
    expect(JSON.parse(out)).toMatchObject({ found: 1, warnings: [{ odd: "cut off" }] });
  });

  test("the command itself, and by the script that the documents name", async () => {
    const args = [good, "--text"];
    const [own, scripted] = await Promise.all([analyse(args), byScript(args, "analyse")]);
    expect(own.code).toBe(0);
    expect(own).toEqual(scripted);
    expect(await analyse([files.path])).toMatchObject({ code: 2, out: "" });
  });
});

describe("what cannot be read is said in a line, and ends with 2", () => {
  test.each([
    ["empty.wav", new Uint8Array(), "The file is empty"],
    ["song.wav", Uint8Array.from([0xff, 0xfb, 0x90, 0x64]), "no WAV but MP3"],
    ["notes.wav", new TextEncoder().encode("Levels of tonight"), "no WAV but text"],
  ])("%s", async (name, bytes, words) => {
    const path = files.write(name, bytes);
    const { code, out, err } = await run(path);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(new RegExp(`^${path}: .*${words}.*\n$`));
  });

  test.each([
    [[], "Expected one recording"],
    [["a.wav", "b.wav"], "Expected one recording"],
    [["--loud", "a.wav"], "--loud"],
    [["nowhere.wav"], "nowhere.wav: there is no such file"],
    [["src"], "src: expected a file, found a folder"],
    [["/dev/null"], "found a pipe or a device"],
  ])("%j", async (args, words) => {
    const { code, out, err } = await run(...args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(words);
  });

  test("a name steers no terminal", async () => {
    const { err } = await run("\u001b[2Jx.wav");
    expect(err).not.toContain("\u001b");
  });

  test("nobody waits at a pipe that nobody writes to", async () => {
    const pipe = join(files.path, "pipe.wav");
    said("mkfifo", pipe);
    expect((await run(pipe)).err).toContain("found a pipe");
  });

  test("--help tells how it is called", async () => {
    const { code, out } = await run("--help");
    expect([code, out]).toEqual([0, expect.stringContaining("npm run --silent analyse")]);
  });
});

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { markdown } from "./tables.ts";

/**
 * `npm run bench:recording -- [minutes]`: how many seconds of a recording are analysed in a second, by us and by ffmpeg's own meters, of the
 * same file: pink noise with our signal before its end, two channels of 24 bits at 48 kHz. Processor time, start included.
 */
const minutes = Number(process.argv[2] ?? "10");
if (!(minutes >= 1 && minutes <= 60)) throw new RangeError(`${minutes} minutes: 1 to 60`);

const folder = mkdtempSync(join(tmpdir(), "bench-"));
const path = (name: string) => join(folder, `${name}.wav`);

/** Seconds of processor time of all programs that were started and ended: Linux tells in hundredths (proc(5), cutime and cstime). */
function byChildren(): number {
  const [, rest = ""] = readFileSync("/proc/self/stat", "utf8").split(") ");
  const fields = rest.split(" ").map(Number);
  return ((fields[13] ?? 0) + (fields[14] ?? 0)) / 100;
}

/** Runs a program to its end, ten minutes at most; the seconds of processor time that it took. */
function used(program: string, ...args: readonly string[]): number {
  const before = byChildren();
  const { status, stderr } = spawnSync(program, args, { timeout: 600_000, maxBuffer: 2 ** 28 });
  if (status !== 0) throw new Error(`${program} ${args.join(" ")}: ${stderr}`);
  return byChildren() - before;
}

const filter = (name: string) => () =>
  used(
    "ffmpeg",
    "-v",
    "error",
    "-threads",
    "1",
    "-i",
    path("whole"),
    "-af",
    name,
    "-f",
    "null",
    "-",
  );

const rows: readonly (readonly [string, () => number])[] = [
  [
    "ours: found and measured",
    () => used(process.execPath, "--import", "tsx", "src/cli/analyse.ts", path("whole")),
  ],
  ["ffmpeg: read alone", filter("anull")],
  ["ffmpeg: astats", filter("astats")],
  ["ffmpeg: aphasemeter", filter("aphasemeter=video=0")],
  ["ffmpeg: ebur128", filter("ebur128")],
];

try {
  used("npm", "run", "--silent", "render", "--", "multitone", path("signal"));
  const noise = ["synth", `${60 * minutes - 20}`, "pinknoise", "vol", "0.05"];
  used("sox", "-r", "48000", "-n", "-c", "2", "-b", "24", path("noise"), ...noise);
  used("sox", path("noise"), path("signal"), path("whole"), "pad", "0", "10");
  const table = rows.map(([name, take]) => {
    const seconds = Math.min(take(), take());
    return [name, seconds.toFixed(1), ((60 * minutes) / seconds).toFixed(0)];
  });
  console.log(markdown(["", "seconds", "seconds of recording a second"], table));
} finally {
  rmSync(folder, { recursive: true });
}

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { analyseRun } from "#cli/analyse-run.ts";
import { openSlices } from "#cli/file-slices.ts";
import { longRecording } from "#tests/recording/long.ts";
import { growthOf } from "#tests/recording/sparse.ts";

/**
 * `npm run soak -- recording [gigabytes]`: a recording of so many gigabytes of sound, which takes no disk, with our signal at its end, is
 * measured. Ends with 1 where it is not found, or where memory grows with the file.
 */
const gigabytes = Number(process.argv[3] ?? "4.3");
if (!(gigabytes >= 0.1 && gigabytes <= 20)) throw new RangeError(`${gigabytes} GB: 0.1 to 20`);
const most = 200e6;

const folder = mkdtempSync(join(tmpdir(), "soak-"));
try {
  const path = join(folder, "long.wav");
  const seconds = (1e9 * gigabytes) / (64 * 48_000);
  const { size, disk } = longRecording(path, { junk: 0, seconds, played: seconds - 10 });
  let printed = "";
  const began = performance.now();
  const growth = await growthOf(async () => {
    printed = (await analyseRun(["--text", path], openSlices)).out;
  });
  const took = (performance.now() - began) / 1000;
  console.log(printed);
  console.log(
    `${(size / 1e9).toFixed(2)} GB (${(disk / 1e6).toFixed(0)} MB of disk), ${seconds.toFixed(0)} s of eight channels in ${took.toFixed(1)} s: ${(seconds / took).toFixed(0)} s each second, ${(size / took / 1e6).toFixed(0)} MB each second; ${(growth / 1e6).toFixed(0)} MB more memory at most`,
  );
  if (!printed.includes("channels 3 and 6") || growth > most) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true });
}

import { spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { setTimeout as after } from "node:timers/promises";
import { long } from "./long.ts";
import { onPath } from "./programs.ts";

/*
 * What plays in real time, in Firefox with a real output. Firefox 153 now and then hangs for good as an AudioContext begins or ends, so
 * each file has a Firefox of its own, and one that hangs is ended and run again in another. A test that fails has failed.
 */

const files = [
  ...(long ? ["anything"] : []),
  "audition",
  "engine-faults",
  "level",
  "places",
  "silence",
  "switching",
  "trouble",
];
/** A file has hung that takes longer; seconds. The longest takes a third of it where nothing else runs. */
const patience = 120;
const tries = 4;
/** So many beside each other: most of the time they only play. */
const beside = 3;

interface Totals {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
}

/** Runs a file; nothing where it hung. */
async function run(file: string): Promise<Totals | undefined> {
  const report = `node_modules/.vitest/live-${file}.json`;
  writeFileSync(report, "");
  const mark = randomUUID();
  const child = spawn(
    "npx",
    [
      "vitest",
      "run",
      "--project",
      "firefox",
      "--retry=1", // a busy machine may leave a hole in what is played
      `--outputFile.json=${report}`,
      `tests/browser/audio/${file}.test.ts`,
    ],
    { stdio: "inherit", env: { ...process.env, LIVE: "firefox", LIVE_RUN: mark } },
  );
  const ended = new Promise<true>((resolve) => child.once("exit", () => resolve(true)));
  const inTime = await Promise.race([ended, after(patience * 1000, false, { ref: false })]);
  endAll(mark);
  await ended;
  if (inTime) return JSON.parse(readFileSync(report, "utf8"));
  return undefined;
}

/** Ends whatever bears a mark in its environment: a browser has a group of its own. */
function endAll(mark: string): void {
  for (const pid of readdirSync("/proc").filter((name) => /^\d+$/.test(name))) {
    try {
      if (readFileSync(`/proc/${pid}/environ`, "latin1").includes(`LIVE_RUN=${mark}`))
        process.kill(Number(pid), "SIGKILL");
    } catch {
      // It has ended meanwhile.
    }
  }
}

/** A file's totals; one failed where it hung every time. */
async function totalsOf(file: string): Promise<Totals> {
  for (let tried = 1; tried <= tries; tried += 1) {
    const totals = await run(file);
    if (totals) return totals;
    console.log(`${file}: Firefox hung, ${tried} of ${tries} times`);
  }
  return { numPassedTests: 0, numFailedTests: 1 };
}

/** The totals of the files that are left, each after the other. */
async function totalsOfAll(left: string[]): Promise<Totals[]> {
  const totals: Totals[] = [];
  for (let file = left.shift(); file !== undefined; file = left.shift())
    totals.push(await totalsOf(file));
  return totals;
}

const there = onPath("pulseaudio") && onPath("firefox-esr", "firefox");
if (!there) console.log("Firefox is left out: firefox-esr or pulseaudio is not installed");
const left = there ? [...files] : [];
const all = (await Promise.all(Array.from({ length: beside }, () => totalsOfAll(left)))).flat();
const sum = (key: keyof Totals) => all.reduce((total, one) => total + one[key], 0);
const totals: Totals = {
  numPassedTests: sum("numPassedTests"),
  numFailedTests: sum("numFailedTests"),
};
writeFileSync("node_modules/.vitest/live.json", JSON.stringify(totals));
console.log(`Firefox, live: ${totals.numPassedTests} passed, ${totals.numFailedTests} failed`);
process.exitCode = totals.numFailedTests > 0 ? 1 : 0;

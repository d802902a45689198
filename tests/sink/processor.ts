import { readdir, readFile } from "node:fs/promises";
import type { Seconds } from "#core/units/units.ts";

/** Processor time that a browser has used so far, by what for. */
export interface Used {
  /** Its pages: their scripts, and the thread that renders their sound. */
  readonly page: Seconds;
  /** Its sound service. */
  readonly audio: Seconds;
  /** All its processes, these too. */
  readonly whole: Seconds;
}

interface Process {
  readonly pid: number;
  readonly parent: number;
  readonly used: Seconds;
  readonly command: string;
}

/** What the kernel counts in. */
const ticks = 100;

/** Processor time of a process and all that came of it, as the kernel counts it. */
export async function usedBy(pid: number): Promise<Used> {
  const all: Process[] = [];
  // One after the other: all at once would itself take the processor from what is being measured.
  for (const name of await readdir("/proc")) {
    const one = /^\d+$/.test(name) ? await processOf(name) : undefined;
    if (one) all.push(one);
  }
  const family = familyOf(pid, all);
  const sum = (is: (command: string) => boolean) =>
    family.reduce((total, { used, command }) => total + (is(command) ? used : 0), 0);
  return {
    page: sum((command) => command.includes("--type=renderer")),
    audio: sum((command) => command.includes("audio.mojom.AudioService")),
    whole: sum(() => true),
  };
}

/** What was used from one reading to another, per second: parts of one core. */
export function shares(from: Used, to: Used, seconds: Seconds): Used {
  const share = (of: keyof Used) => (to[of] - from[of]) / seconds;
  return { page: share("page"), audio: share("audio"), whole: share("whole") };
}

function familyOf(pid: number, all: readonly Process[]): readonly Process[] {
  const own = all.filter((one) => one.pid === pid);
  const children = all.filter(({ parent }) => parent === pid);
  return [...own, ...children.flatMap((child) => familyOf(child.pid, all))];
}

/** Undefined when it has ended meanwhile. */
async function processOf(name: string): Promise<Process | undefined> {
  try {
    const stat = await readFile(`/proc/${name}/stat`, "utf8");
    const command = await readFile(`/proc/${name}/cmdline`, "utf8");
    // After the name in brackets: state, parent, then nine that do not matter, user and system time.
    const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    const used = (Number(fields[11]) + Number(fields[12])) / ticks;
    return { pid: Number(name), parent: Number(fields[1]), used, command };
  } catch {
    return undefined;
  }
}

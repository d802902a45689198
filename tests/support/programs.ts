import { type ChildProcess, type SpawnOptions, spawn } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Where the first of these programs that is installed is, best first. */
export function onPath(...names: string[]): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(runs);
}

/** Whether a file may be run. */
export function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export interface Started {
  readonly child: ChildProcess;
  /** Ends it, and waits until it has ended. */
  readonly stop: () => Promise<void>;
}

/** Seconds after which a program ends by itself, whatever became of who started it. */
const longestLife = 900;

/** Starts a program in the background. */
export function started(program: string, args: string[], options: SpawnOptions): Started {
  const child = spawn("timeout", [`${longestLife}`, program, ...args], options);
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  const end = () => void child.kill();
  process.once("exit", end);
  void ended.then(() => process.off("exit", end));
  const stop = async () => {
    if (child.exitCode === null && child.signalCode === null) child.kill();
    await ended;
  };
  return { child, stop };
}

/** Asks every 50 ms until something is there. Throws after ten seconds. */
export async function waited<T>(what: string, ask: () => Promise<T | undefined>): Promise<T> {
  for (let times = 0; times < 200; times += 1) {
    const found = await ask().catch(() => undefined);
    if (found !== undefined) return found;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`${what} did not begin within ten seconds`);
}

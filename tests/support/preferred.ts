import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";

/*
 * What keeps real time goes before whatever else a busy machine does, where that may be asked for (as root, or with the right to).
 * Else it runs as all others, and is right on a machine that has nothing else to do.
 */

/** Priorities: of the sound server, and of those that wait for it. */
const [server, others] = ["4", "2"];
const changer = "chrt";
const may = spawnSync(changer, ["--rr", others, "true"], { stdio: "ignore" }).status === 0;

/** A program and its arguments, to be started so. */
export const preferred = (program: string, args: readonly string[]): [string, string[]] =>
  may ? [changer, ["--rr", others, program, ...args]] : [program, [...args]];

/** Has all that this process started, and all of that, run so; not itself. */
export function preferStarted(): void {
  if (!may) return;
  for (const { pid, name } of below(process.pid)) {
    const priority = name === "pulseaudio" ? server : others;
    const args = ["--all-tasks", "--rr", "--pid", priority, `${pid}`];
    spawnSync(changer, args, { stdio: "ignore" });
  }
}

interface Process {
  readonly pid: number;
  readonly name: string;
  readonly parent: number;
}

function below(pid: number, all = processes()): readonly Process[] {
  const children = all.filter(({ parent }) => parent === pid);
  return [...children, ...children.flatMap((child) => below(child.pid, all))];
}

const processes = (): readonly Process[] =>
  readdirSync("/proc").flatMap((name) => (/^\d+$/.test(name) ? processOf(name) : []));

/** None when it has ended meanwhile. */
function processOf(pid: string): readonly Process[] {
  try {
    // The name in brackets, the state, and the parent.
    const [, name = "", parent] =
      /\((.*)\) \S (\d+)/.exec(readFileSync(`/proc/${pid}/stat`, "utf8")) ?? [];
    return [{ pid: Number(pid), name, parent: Number(parent) }];
  } catch {
    return [];
  }
}

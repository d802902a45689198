import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** How a run of the command ended. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const ending = (
  program: string,
  args: readonly string[],
  input?: string | Uint8Array,
): Promise<Ended> =>
  new Promise((resolve) => {
    const child = execFile(program, args, { maxBuffer: 64 * 1024 * 1024 }, (error, out, err) => {
      const code = error === null ? 0 : Number(error.code);
      resolve({ code, out, err });
    });
    // It may end before it has read everything.
    child.stdin?.on("error", () => undefined);
    child.stdin?.end(input);
  });

const own = (command: string, args: readonly string[], input?: string | Uint8Array) =>
  ending(process.execPath, ["--import", "tsx", `src/cli/${command}.ts`, ...args], input);

/** Runs the real command in a process of its own. */
export const diagnose = (args: readonly string[], input?: string | Uint8Array): Promise<Ended> =>
  own("diagnose", args, input);

/** The same of the command that measures recordings. */
export const analyse = (args: readonly string[]): Promise<Ended> => own("analyse", args);

/** A command by the script that the documents name. */
export const byScript = (
  args: readonly string[],
  script: "diagnose" | "analyse" = "diagnose",
): Promise<Ended> => ending("npm", ["run", "--silent", script, "--", ...args]);

/** Runs some work on every item, three at a time. */
export async function threeAtATime<Item, Done>(
  items: readonly Item[],
  work: (item: Item) => Promise<Done>,
): Promise<readonly Done[]> {
  const done: Done[] = [];
  const rest = items.entries();
  const worker = async () => {
    for (const [at, item] of rest) done[at] = await work(item);
  };
  await Promise.all([worker(), worker(), worker()]);
  return done;
}

/** A folder for files that a test makes, and what removes it. */
export function folder() {
  const path = mkdtempSync(join(tmpdir(), "case-"));
  return {
    write: (name: string, content: string | Uint8Array): string => {
      const file = join(path, name);
      writeFileSync(file, content);
      return file;
    },
    path,
    remove: () => rmSync(path, { recursive: true }),
  };
}

/** Anything that JSON holds, to be changed in a test. */
// biome-ignore lint/suspicious/noExplicitAny: a test breaks a case in every way there is
export type Anything = any;

/** The documented example, a new copy each time. */
export const example = (): Anything => JSON.parse(readFileSync("public/example-case.json", "utf8"));

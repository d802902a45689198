import { spawnSync } from "node:child_process";

const has = (program: string, ...args: readonly string[]): boolean =>
  spawnSync(program, args).error === undefined;
/** Whether both are installed; where all tests are run they must be. */
export const outsideHere =
  (has("sox", "--version") && has("ffmpeg", "-version")) || process.env.CI !== undefined;

/** What a program prints, on either output; throws where it fails. */
export function said(program: string, ...args: readonly string[]): string {
  const { stdout, stderr, status } = spawnSync(program, args, { encoding: "utf8" });
  if (status !== 0) throw new Error(`${program} ${args.join(" ")}: ${stderr}`);
  return `${stdout}${stderr}`;
}

/** A row of what `sox … stats` prints: overall, left, right. */
export const row = (text: string, name: string): readonly number[] => {
  const [, rest = ""] = text.match(new RegExp(`^${name}\\s+(.*)$`, "m")) ?? [];
  return rest.split(/\s+/).map(Number);
};

/** What ffmpeg prints of a file through a filter; `cut`: options that take a part of the file. */
export const filtered = (path: string, filter: string, ...cut: readonly string[]): string =>
  said("ffmpeg", "-hide_banner", ...cut, "-i", path, "-af", filter, "-f", "null", "-");

/** Every number that follows a word. */
export const numbersAfter = (text: string, word: string): readonly number[] =>
  [...text.matchAll(new RegExp(`${word}(-?[\\d.]+)`, "g"))].map(([, one]) => Number(one));

import { createReadStream } from "node:fs";
import type { Input } from "./run.ts";

/** A case of hundreds of positions and a day's log stays well under it. */
const mostBytes = 20 * 1024 * 1024;

/** Reads a file, or the standard input for '-': UTF-8, up to 20 MB. What the disk refuses is said, never thrown. */
export async function readInput(file: string): Promise<Input> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  try {
    const stream = file === "-" ? process.stdin : createReadStream(file);
    for await (const chunk of stream) {
      chunks.push(chunk);
      bytes += chunk.length;
      if (bytes > mostBytes) return { missing: `${named(file)}: expected at most 20 MB` };
    }
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(chunks)) };
  } catch (error) {
    return { missing: `${named(file)}: ${reasonOf(error)}` };
  }
}

/** Why the disk hands out no file, in a few words. */
export function reasonOf(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  return reasons[code ?? ""] ?? `cannot be read (${code})`;
}

const named = (file: string): string => (file === "-" ? "the standard input" : file);

const reasons: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "expected a file, found a folder",
  EACCES: "it may not be read",
  ERR_ENCODING_INVALID_ENCODED_DATA: "expected UTF-8",
};

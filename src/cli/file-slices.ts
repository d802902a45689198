import { type FileHandle, open, stat } from "node:fs/promises";
import type { Slices } from "#recording/slices.ts";
import { reasonOf } from "./read-input.ts";

/** A file that is open, and what closes it. */
interface OpenFile {
  readonly slices: Slices;
  readonly close: () => Promise<void>;
}

/** Opens a file to be read in slices, or says why not. A pipe or a device has none, and opening one may wait for ever. */
export async function openSlices(path: string): Promise<OpenFile | { readonly missing: string }> {
  try {
    const found = await stat(path);
    if (!found.isFile()) {
      const what = found.isDirectory() ? "a folder" : "a pipe or a device";
      return { missing: `${path}: expected a file, found ${what}` };
    }
    const file = await open(path);
    return { slices: slicesOf(file, found.size), close: () => file.close() };
  } catch (error) {
    return { missing: `${path}: ${reasonOf(error)}` };
  }
}

const slicesOf = (file: FileHandle, size: number): Slices => ({
  size,
  read: async (from, to) => {
    const bytes = new Uint8Array(Math.max(0, to - from));
    const { bytesRead } = await file.read(bytes, 0, bytes.length, from);
    return bytes.subarray(0, bytesRead);
  },
});

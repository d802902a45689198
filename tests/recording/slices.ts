import type { Slices } from "#recording/slices.ts";

/** Bytes in memory as a file; counts how many were read, and the most at a time. */
export function inMemory(bytes: Uint8Array, size = bytes.length) {
  const asked = { reads: 0, bytes: 0, most: 0 };
  const slices: Slices = {
    size,
    read: async (from, to) => {
      asked.reads += 1;
      asked.bytes += to - from;
      asked.most = Math.max(asked.most, to - from);
      return bytes.slice(from, to);
    },
  };
  return { slices, asked };
}

/** A file that claims some size, and that no disk hands out. */
export const gone: Slices = {
  size: 1000,
  read: () => Promise.reject(new Error("the disk is gone")),
};

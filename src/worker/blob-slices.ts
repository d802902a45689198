import type { Slices } from "#recording/slices.ts";

/** A file of the page, read in slices: only what is asked for comes into memory. */
export const blobSlices = (blob: Blob): Slices => ({
  size: blob.size,
  read: async (from, to) => new Uint8Array(await blob.slice(from, to).arrayBuffer()),
});

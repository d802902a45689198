import { closeSync, ftruncateSync, openSync, statSync, writeSync } from "node:fs";

/** Bytes, and where in a file they stand. */
export type Placed = readonly (readonly [at: number, bytes: Uint8Array])[];

/** Writes a file of some size that takes no disk but for what is placed: holes are zeros. Tells how many bytes of disk it takes. */
export function sparse(path: string, size: number, placed: Placed): number {
  const file = openSync(path, "w");
  for (const [at, bytes] of placed) writeSync(file, bytes, 0, bytes.length, at);
  ftruncateSync(file, size);
  closeSync(file);
  return statSync(path).blocks * 512;
}

/** How much more memory this process takes at most, in bytes, while something runs. */
export async function growthOf(work: () => Promise<void>): Promise<number> {
  const before = process.memoryUsage().rss;
  let most = before;
  const watch = setInterval(() => {
    most = Math.max(most, process.memoryUsage().rss);
  }, 20);
  await work();
  clearInterval(watch);
  return Math.max(most, process.memoryUsage().rss) - before;
}

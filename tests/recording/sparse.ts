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

/** Memory of this process before it did anything. */
const atFirst = process.memoryUsage().rss;

/** How much more memory this process takes at most while something runs than when it began, in bytes: what it took and gave back before hides nothing. */
export async function growthOf(work: () => Promise<void>): Promise<number> {
  let most = 0;
  const look = () => {
    most = Math.max(most, process.memoryUsage().rss - atFirst);
  };
  const watch = setInterval(look, 20);
  await work();
  look();
  clearInterval(watch);
  return most;
}

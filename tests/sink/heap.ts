import type { OpenPage } from "./listeners.ts";

/** Bytes that a page's scripts hold once all garbage is collected; undefined where the browser does not tell. */
export async function heldBy({ inspect }: OpenPage): Promise<number | undefined> {
  await inspect?.("HeapProfiler.collectGarbage");
  return inspect && usedOf(await inspect("Runtime.getHeapUsage"));
}

/** Bytes in use, garbage too. */
export async function inUseBy({ inspect }: OpenPage): Promise<number | undefined> {
  return inspect && usedOf(await inspect("Runtime.getHeapUsage"));
}

const usedOf = (usage: unknown): number => (usage as { readonly usedSize: number }).usedSize;

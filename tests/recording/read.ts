import { type Block, blocksOf, wholeOf } from "#recording/blocks.ts";
import { type Layout, layoutOf } from "#recording/layout.ts";
import type { Slices } from "#recording/slices.ts";
import type { Trouble } from "#recording/trouble.ts";
import { inMemory } from "./slices.ts";

/** Everything that is read of a file, or why there is nothing. */
export async function readAll(
  slices: Slices,
): Promise<{ layout: Layout; channels: number[][]; strange: number; ended?: Trouble } | Trouble> {
  const layout = await layoutOf(slices);
  if ("trouble" in layout) return layout;
  const channels: number[][] = Array.from({ length: layout.channels }, () => []);
  const blocks = blocksOf(slices, layout, wholeOf(layout));
  let strange = 0;
  const put = (block: Block) => {
    strange += block.strange;
    for (const [at, samples] of block.channels.entries())
      for (const sample of samples) channels[at]?.push(sample);
  };
  for (;;) {
    const { done, value } = await blocks.next();
    if (done)
      return { layout, channels, strange, ...(value === undefined ? {} : { ended: value }) };
    put(value);
  }
}

/** Samples of some channels, none two alike, full scale 1. */
export const wave = (channels: number, frames: number): readonly number[][] =>
  Array.from({ length: channels }, (_, channel) =>
    Array.from({ length: frames }, (_, n) => 0.9 * Math.sin(0.1 * (n + 1) * (channel + 1))),
  );

/** The same of a file that can be read; else it throws. */
export const read = async (bytes: Uint8Array) => {
  const found = await readAll(inMemory(bytes).slices);
  if ("trouble" in found) throw new Error(`${found.trouble}: ${found.found}`);
  return found;
};

/** The greatest difference between samples. */
export const worst = (found: readonly number[][], expected: readonly number[][]): number =>
  Math.max(
    ...expected.flatMap((channel, at) =>
      channel.map((x, n) => Math.abs(x - (found[at]?.[n] ?? 9))),
    ),
  );

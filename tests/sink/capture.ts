import { started } from "#tests/support/programs.ts";
import type { Pulse, Sink } from "#tests/support/pulse.ts";

export type Milliseconds = number;

/** What came out of a device: two channels, full scale 1, and when each part of it arrived. */
export interface Recording {
  readonly left: Float32Array;
  readonly right: Float32Array;
  readonly rate: number;
  readonly chunks: readonly Chunk[];
}

/** A part of a recording as it was handed over. */
interface Chunk {
  /** Its first frame, and the one after its last. */
  readonly from: number;
  readonly to: number;
  /** When it arrived, on the wall clock in milliseconds. */
  readonly at: number;
}

export interface Capture {
  /** How many frames have come so far. */
  readonly frames: () => number;
  /** Ends it; all that came since it was begun. */
  readonly stop: () => Promise<Recording>;
}

/** The wall clock in milliseconds, as fine as the machine has it; a page's `timeOrigin` and `now` make the same. */
export const clock = (): number => performance.timeOrigin + performance.now();

/** Bytes of a frame: two channels of 32-bit floats. */
const frame = 8;

/** Records what an output plays, bit for bit where it is of floats; `latency` in milliseconds is how finely it comes. */
export async function capture(pulse: Pulse, sink: Sink, latency: number): Promise<Capture> {
  const { name, rate } = sink;
  const args = [
    `--device=${name}.monitor`,
    "--raw",
    "--format=float32le",
    `--rate=${rate}`,
    "--channels=2",
    `--latency-msec=${latency}`,
  ];
  const { child, stop } = started("parec", args, {
    env: pulse.env,
    stdio: ["ignore", "pipe", "inherit"],
  });
  const parts: Buffer[] = [];
  const chunks: Chunk[] = [];
  let bytes = 0;
  const first = new Promise<void>((resolve, reject) => {
    child.once("exit", () => reject(new Error(`nothing was recorded from ${name}`)));
    child.stdout?.on("data", (part: Buffer) => {
      const from = Math.floor(bytes / frame);
      bytes += part.length;
      parts.push(part);
      chunks.push({ from, to: Math.floor(bytes / frame), at: clock() });
      resolve();
    });
  });
  await first;
  return {
    frames: () => Math.floor(bytes / frame),
    stop: async () => {
      await stop();
      return { ...sidesOf(Buffer.concat(parts)), rate, chunks };
    },
  };
}

/** Both channels of frames as bytes. */
function sidesOf(all: Buffer): { readonly left: Float32Array; readonly right: Float32Array } {
  const count = Math.floor(all.length / frame);
  const [left, right] = [new Float32Array(count), new Float32Array(count)];
  for (let n = 0; n < count; n += 1) {
    left[n] = all.readFloatLE(n * frame);
    right[n] = all.readFloatLE(n * frame + frame / 2);
  }
  return { left, right };
}

/**
 * When a frame came out of the device, on the wall clock in milliseconds. A device without hardware takes a part at once and counts
 * it as played from then on: no frame is out before its part was handed over.
 */
export function timeOf({ chunks, rate }: Recording, frame: number): Milliseconds {
  let [low, high] = [0, chunks.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((chunks[middle]?.to ?? 0) > frame) high = middle;
    else low = middle + 1;
  }
  const chunk = chunks[low];
  if (chunk === undefined || frame >= chunk.to || frame < 0)
    throw new RangeError(`frame ${frame} was not recorded`);
  return chunk.at + ((frame - chunk.from) / rate) * 1000;
}

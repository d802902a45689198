import { multitone } from "#core/signals/multitone.ts";
import { renderSignal } from "#core/signals/render.ts";
import { chunk, format, letters, number, riff } from "./made.ts";
import { type Placed, sparse } from "./sparse.ts";

/** A recording that takes hardly any disk: RF64, eight channels of 64-bit floats at 48 kHz, silent but for our signal. */
export interface Long {
  /** Bytes of a chunk that is no sound, before all sound. */
  readonly junk: number;
  readonly seconds: number;
  /** When the signal begins, in seconds of the sound. */
  readonly played: number;
}

const rate = 48_000;
const channels = 8;
const frame = 8 * channels;
const ones = number(2 ** 32 - 1, 4);

/** The left on the third channel at half its size, the right upside down on the sixth. */
function signalBytes(): Uint8Array {
  const { left, right } = renderSignal(multitone, rate, 1);
  const samples = new Float64Array(channels * left.length);
  for (const [n, sample] of left.entries()) {
    samples[channels * n + 2] = 0.5 * sample;
    samples[channels * n + 5] = -(right[n] ?? 0);
  }
  return new Uint8Array(samples.buffer);
}

/** Writes such a recording; tells how long the file is, how much disk it takes, and where its sound begins, in bytes. */
export function longRecording(path: string, { junk, seconds, played }: Long) {
  const bytes = Math.round(seconds * rate) * frame;
  const sizes = chunk("ds64", [
    ...number(0, 8),
    ...number(bytes, 8),
    ...number(0, 8),
    ...number(1, 4),
    ...letters("JUNK"),
    ...number(junk, 8),
  ]);
  const before = riff([...sizes, ...letters("JUNK"), ...ones], {
    name: "RF64",
    size: 2 ** 32 - 1,
  });
  const head = [...format({ code: 3, bits: 64, channels }), ...letters("data"), ...ones];
  const from = before.length + junk + head.length;
  const placed: Placed = [
    [0, before],
    [before.length + junk, Uint8Array.from(head)],
    [from + Math.round(played * rate) * frame, signalBytes()],
  ];
  return { size: from + bytes, disk: sparse(path, from + bytes, placed), from };
}

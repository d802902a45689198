import type { Coding } from "./format-chunk.ts";

interface Reader {
  readonly bytes: number;
  /** One sample, full scale 1. */
  readonly at: (view: DataView, at: number) => number;
}

const readers: Readonly<Record<Coding, Reader>> = {
  "unsigned 8": { bytes: 1, at: (view, at) => (view.getUint8(at) - 128) / 2 ** 7 },
  "signed 16": { bytes: 2, at: (view, at) => view.getInt16(at, true) / 2 ** 15 },
  "signed 24": {
    bytes: 3,
    at: (view, at) => (view.getInt8(at + 2) * 2 ** 16 + view.getUint16(at, true)) / 2 ** 23,
  },
  "signed 32": { bytes: 4, at: (view, at) => view.getInt32(at, true) / 2 ** 31 },
  "float 32": { bytes: 4, at: (view, at) => view.getFloat32(at, true) },
  "float 64": { bytes: 8, at: (view, at) => view.getFloat64(at, true) },
};

/** Takes one channel out of whole frames; tells how many were no finite numbers of 32 bits. In their place stands nothing, 0. */
export function takeChannel(
  view: DataView,
  coding: Coding,
  channel: number,
  frame: number,
  into: Float32Array,
): number {
  const { at: read, bytes } = readers[coding];
  let at = channel * bytes;
  let strange = 0;
  for (let n = 0; n < into.length; n += 1) {
    const sample = Math.fround(read(view, at));
    if (Number.isFinite(sample)) into[n] = sample;
    else strange += 1;
    at += frame;
  }
  return strange;
}

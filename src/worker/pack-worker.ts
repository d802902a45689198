import type { Hertz } from "#core/units/units.ts";
import { packed } from "#pack/pack.ts";
import type { Told } from "./packing.ts";

/** Message in: a rate. Messages out: how far it is, then the file. */
const tell = (told: Told) => self.postMessage(told);

self.onmessage = ({ data: rate }: MessageEvent<Hertz>) => {
  const making = packed(rate);
  for (;;) {
    const { done, value } = making.next();
    if (done) return tell({ file: value as Uint8Array<ArrayBuffer> });
    tell({ share: value });
  }
};

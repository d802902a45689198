import type { Capture } from "#core/measurement/capture.ts";
import type { Hertz } from "#core/units/units.ts";
import { packed } from "#pack/pack.ts";
import { wavOfCapture } from "#pack/wav.ts";
import type { Told } from "./packing.ts";

/** Message in: a rate, or a capture. Messages out: how far it is, then the file. */
self.onmessage = ({ data }: MessageEvent<Hertz | Capture>) =>
  typeof data === "number" ? packAt(data) : done(wavOfCapture(data));

const tell = (told: Told) => self.postMessage(told);
const done = (file: Uint8Array) => tell({ file: file as Uint8Array<ArrayBuffer> });

function packAt(rate: Hertz): void {
  const making = packed(rate);
  for (;;) {
    const step = making.next();
    if (step.done) {
      done(step.value);
      return;
    }
    tell({ share: step.value });
  }
}

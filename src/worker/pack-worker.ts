import type { Capture } from "#core/measurement/capture.ts";
import { packed } from "#pack/pack.ts";
import { wavOfCapture } from "#pack/wav.ts";
import type { Pack, Told } from "./packing.ts";

/** Message in: a rate with its sheet, or a capture. Messages out: how far it is, then the file. */
self.onmessage = ({ data }: MessageEvent<Pack | Capture>) =>
  "sheet" in data ? packAt(data) : done(wavOfCapture(data));

const tell = (told: Told) => self.postMessage(told);
const done = (file: Uint8Array) => tell({ file: file as Uint8Array<ArrayBuffer> });

function packAt({ rate, sheet }: Pack): void {
  const making = packed(rate, sheet);
  for (;;) {
    const step = making.next();
    if (step.done) {
      done(step.value);
      return;
    }
    tell({ share: step.value });
  }
}

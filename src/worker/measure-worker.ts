import type { Capture } from "#core/measurement/capture.ts";
import { measureReturn } from "#core/measurement/measured.ts";
import { analyseRecording } from "#recording/analyse.ts";
import { blobSlices } from "./blob-slices.ts";
import type { Told } from "./measuring.ts";

/**
 * Message in: a file, or a capture. Messages out: of a file how far it is, then what was made of it; of a capture what it says, or why it says
 * nothing.
 */
self.onmessage = ({ data }: MessageEvent<Blob | Capture>) =>
  data instanceof Blob ? analysed(data) : self.postMessage(measureReturn(data));

const tell = (told: Told) => self.postMessage(told);

async function analysed(file: Blob): Promise<void> {
  const working = analyseRecording(blobSlices(file));
  for (;;) {
    const { done, value } = await working.next();
    if (done) return tell({ analysis: value });
    tell({ share: value });
  }
}

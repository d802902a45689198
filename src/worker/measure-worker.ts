import { analyseRecording } from "#recording/analyse.ts";
import { blobSlices } from "./blob-slices.ts";
import type { Told } from "./measuring.ts";

/** Message in: a file. Messages out: how far it is, then what was made of it. */
const tell = (told: Told) => self.postMessage(told);

self.onmessage = async ({ data: file }: MessageEvent<Blob>) => {
  const working = analyseRecording(blobSlices(file));
  for (;;) {
    const { done, value } = await working.next();
    if (done) return tell({ analysis: value });
    tell({ share: value });
  }
};

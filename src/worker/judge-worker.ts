import type { Capture } from "#core/measurement/capture.ts";
import { measureReturn } from "#core/measurement/measured.ts";

/** Message in: a capture. Message out: what it says, or why it says nothing. */
self.onmessage = ({ data: capture }: MessageEvent<Capture>) =>
  self.postMessage(measureReturn(capture));

import type { Hertz } from "#core/units/units.ts";

/** By this name the module on the audio thread is asked for. */
export const recordingProcessor = "recording";

/** Samples as they reach the audio thread, some at a time; full scale is 1. */
export interface RecordingBlock {
  /** One array a channel, as many as come in at that moment. */
  readonly channels: readonly Float32Array<ArrayBuffer>[];
  /** The first frame of it, on the context's own count of frames. */
  readonly frame: number;
  /** Frames a second. */
  readonly rate: Hertz;
}

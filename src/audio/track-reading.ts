import type { Listening } from "./listening.ts";
import type { RecordingBlock } from "./recording-block.ts";

/** What Chromium has since version 94 and the types do not know: the samples of a track as they come, beside any context. */
interface TrackProcessor {
  readonly readable: ReadableStream<AudioData>;
}
type NewTrackProcessor = new (how: {
  readonly track: MediaStreamTrack;
  readonly maxBufferSize: number;
}) => TrackProcessor;

/** How many frames came in at all, and how many of them were handed on; Chromium, since version 122. */
interface Counted {
  readonly stats?: { readonly totalFrames: number; readonly deliveredFrames: number };
}

/** Pieces that may wait for a busy page: some seconds. What comes beyond is thrown away. */
const waiting = 400;

const processorOf = (): NewTrackProcessor | undefined =>
  (globalThis as { readonly MediaStreamTrackProcessor?: NewTrackProcessor })
    .MediaStreamTrackProcessor;

/** Whether the browser gives the samples of a track. */
export const canReadTracks = (): boolean =>
  processorOf() !== undefined && typeof AudioData !== "undefined";

/** Hands over the samples of a track, each as it came. */
export async function readTrack(
  track: MediaStreamTrack & Counted,
  onBlock: (block: RecordingBlock) => void,
): Promise<Listening> {
  const Processor = processorOf();
  if (Processor === undefined) throw new Error("this browser does not give the samples of a track");
  const reader = new Processor({ track, maxBufferSize: waiting }).readable.getReader();
  const dropped = () => (track.stats ? track.stats.totalFrames - track.stats.deliveredFrames : 0);
  const before = dropped();
  let [frames, rate] = [0, 1];
  const take = (data: AudioData) => {
    const channels = channelsOf(data);
    rate = data.sampleRate;
    onBlock({ channels, frame: frames + dropped() - before, rate });
    frames += data.numberOfFrames;
    data.close();
  };
  const read = async () => {
    for (let next = await reader.read(); !next.done; next = await reader.read()) take(next.value);
  };
  // It ends with the track, of which others hear.
  read().catch(() => undefined);
  return {
    context: undefined,
    heard: () => frames / rate,
    close: () => void reader.cancel().catch(() => undefined),
  };
}

const channelsOf = (data: AudioData) =>
  Array.from({ length: data.numberOfChannels }, (_, planeIndex) => {
    const samples = new Float32Array(data.numberOfFrames);
    data.copyTo(samples, { planeIndex, format: "f32-planar" });
    return samples;
  });

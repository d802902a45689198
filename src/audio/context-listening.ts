import type { Hertz } from "#core/units/units.ts";
import type { Listening } from "./listening.ts";
import { type RecordingBlock, recordingProcessor } from "./recording-block.ts";
import moduleUrl from "./recording-worklet.ts?worker&url";
import { runs } from "./runs.ts";

/*
 * The browser's own context, not the library's: that one loads its audio worklets from blob addresses, which the page's policy
 * refuses.
 */

/**
 * Leads a stream to the audio thread, whose node has no output, and hands over what comes, on as many channels as come. Rejects
 * where there is no context to be had, or the file of that thread does not load.
 */
export async function listenInContext(
  stream: MediaStream,
  track: MediaStreamTrack,
  onBlock: (block: RecordingBlock) => void,
): Promise<Listening> {
  const [context, source] = sourceOf(stream, track.getSettings().sampleRate);
  try {
    await context.audioWorklet.addModule(moduleUrl);
  } catch (error) {
    await context.close();
    throw error;
  }
  const node = new AudioWorkletNode(context, recordingProcessor, {
    numberOfInputs: 1,
    numberOfOutputs: 0,
    channelCountMode: "max",
    channelInterpretation: "discrete",
  });
  node.port.onmessage = ({ data }: MessageEvent<RecordingBlock>) => onBlock(data);
  source.connect(node);
  await runs(context);
  return {
    context,
    heard: () => context.currentTime,
    close: () => void context.close().catch(() => undefined),
  };
}

/** A context at the input's own rate, where the browser takes one at it. */
function sourceOf(
  stream: MediaStream,
  rate: Hertz | undefined,
): readonly [AudioContext, MediaStreamAudioSourceNode] {
  const latencyHint = "interactive";
  let context: AudioContext | undefined;
  try {
    context = new AudioContext({ latencyHint, ...(rate !== undefined && { sampleRate: rate }) });
    return [context, context.createMediaStreamSource(stream)];
  } catch {
    context?.close().catch(() => undefined);
    context = new AudioContext({ latencyHint });
    return [context, context.createMediaStreamSource(stream)];
  }
}

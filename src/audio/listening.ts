import type { Seconds } from "#core/units/units.ts";
import { listenInContext } from "./context-listening.ts";
import type { RecordingBlock } from "./recording-block.ts";
import { canReadTracks, readTrack } from "./track-reading.ts";

/** Something that hands over what an input hears, until it is closed. */
export interface Listening {
  /** The context it takes, where it takes one. */
  readonly context: AudioContext | undefined;
  /** How much it has heard so far: a clock of its own. */
  readonly heard: () => Seconds;
  readonly close: () => void;
}

/**
 * Begins to listen. Where the browser gives the samples of an input as they are, on the input's own clock, they are taken so; else in
 * an audio context, whose clock is another one: what was not there when its time had come is silence, and what came too early
 * may be thrown away. Rejects where neither is to be had.
 */
export const listenTo = (
  stream: MediaStream,
  track: MediaStreamTrack,
  onBlock: (block: RecordingBlock) => void,
): Promise<Listening> =>
  canReadTracks() ? readTrack(track, onBlock) : listenInContext(stream, track, onBlock);

import type {
  IAudioContext,
  IAudioNode,
  IBaseAudioContext,
  IGainNode,
  IOfflineAudioContext,
} from "standardized-audio-context";
import type { EarMatrix } from "./ear-matrix.ts";

/** A context that plays, or one that renders the same to samples. */
export type Context = IAudioContext | IOfflineAudioContext;

/** Every channel of a node by itself. */
export function splitter<T extends Context>(
  context: IBaseAudioContext<T>,
  source: IAudioNode<T>,
  channels: number,
): IAudioNode<T> {
  const sides = context.createChannelSplitter(channels);
  source.connect(sides);
  return sides;
}

/** From two channels, the first of them given: a gain for each entry that is not zero, and a merger. */
export function listen<T extends Context>(
  context: IBaseAudioContext<T>,
  channels: IAudioNode<T>,
  first: number,
  { ll, lr, rl, rr }: EarMatrix,
): IAudioNode<T> {
  const ears = context.createChannelMerger(2);
  const entries: [gain: number, channel: number, ear: number][] = [
    [ll, first, 0],
    [lr, first + 1, 0],
    [rl, first, 1],
    [rr, first + 1, 1],
  ];
  for (const [gain, channel, ear] of entries) {
    if (gain === 0) continue;
    const entry = gainNode(context, gain, 1);
    channels.connect(entry, channel);
    entry.connect(ears, 0, ear);
  }
  return ears;
}

/** A gain that mixes no channel with another. */
export function gainNode<T extends Context>(
  context: IBaseAudioContext<T>,
  gain: number,
  channels = 2,
): IGainNode<T> {
  const node = discrete(context.createGain(), channels);
  node.gain.value = gain;
  return node;
}

/** A browser that mixes channels up or down would make one side of two: never. */
export function discrete<N extends IAudioNode<Context>>(node: N, channels: number): N {
  node.channelCount = channels;
  node.channelCountMode = "explicit";
  node.channelInterpretation = "discrete";
  return node;
}

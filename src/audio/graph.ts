import type {
  IAudioBufferSourceNode,
  IAudioContext,
  IAudioNode,
  IAudioParam,
  IBaseAudioContext,
  IGainNode,
  IOfflineAudioContext,
} from "standardized-audio-context";
import type { Admitted } from "#core/signals/admit.ts";
import { peakCap } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { EarMatrix } from "./ear-matrix.ts";

/** A context that plays, or one that renders the same to samples. */
export type Context = IAudioContext | IOfflineAudioContext;

export interface Graph<T extends Context> {
  /** Not started yet. */
  readonly source: IAudioBufferSourceNode<T>;
  /** Gain of the samples; see `gainFor`. */
  readonly level: IAudioParam;
  /** One while it sounds; only ever goes to zero. */
  readonly fade: IAudioParam;
  /** Takes the graph off the output. */
  readonly release: () => void;
}

export interface GraphOptions {
  readonly sound: Admitted;
  /** Play it as a feed with this matrix would sound. Left out: as it is. */
  readonly through?: EarMatrix | undefined;
  /** Gain to begin with. */
  readonly gain: number;
}

/** No sample leaves greater than this, full scale 1. */
const cap = fromDecibels(peakCap);

/**
 * Gate two, the only way to an output: samples, ears, level, fade, and a shaper that caps whatever comes, exactly
 * linear below the cap. The same function serves the context that plays and the one that proves it.
 */
export function buildGraph<T extends Context>(
  context: IBaseAudioContext<T>,
  options: GraphOptions,
): Graph<T> {
  const source = context.createBufferSource();
  source.buffer = bufferOf(context, options.sound);
  const level = gainNode(context, options.gain);
  const fade = gainNode(context, 1);
  const toShaper = gainNode(context, 1 / cap);
  const shaper = discrete(context.createWaveShaper(), 2);
  shaper.curve = new Float32Array([-cap, 0, cap]);
  const ears = options.through ? listen(context, source, options.through) : source;
  ears.connect(level);
  level.connect(fade);
  fade.connect(toShaper);
  toShaper.connect(shaper);
  shaper.connect(context.destination);
  return { source, level: level.gain, fade: fade.gain, release: () => shaper.disconnect() };
}

function bufferOf<T extends Context>(
  context: IBaseAudioContext<T>,
  { left, right, rate }: Admitted,
) {
  const buffer = context.createBuffer(2, left.length, rate);
  buffer.copyToChannel(left, 0);
  buffer.copyToChannel(right, 1);
  return buffer;
}

/** Splitter, a gain for each entry that is not zero, merger. */
function listen<T extends Context>(
  context: IBaseAudioContext<T>,
  source: IAudioNode<T>,
  { ll, lr, rl, rr }: EarMatrix,
): IAudioNode<T> {
  const sides = context.createChannelSplitter(2);
  const ears = context.createChannelMerger(2);
  const entries: [gain: number, side: number, ear: number][] = [
    [ll, 0, 0],
    [lr, 1, 0],
    [rl, 0, 1],
    [rr, 1, 1],
  ];
  source.connect(sides);
  for (const [gain, side, ear] of entries) {
    if (gain === 0) continue;
    const entry = gainNode(context, gain, 1);
    sides.connect(entry, side);
    entry.connect(ears, 0, ear);
  }
  return ears;
}

function gainNode<T extends Context>(
  context: IBaseAudioContext<T>,
  gain: number,
  channels = 2,
): IGainNode<T> {
  const node = discrete(context.createGain(), channels);
  node.gain.value = gain;
  return node;
}

/** A browser that mixes channels up or down would make one side of two: never. */
function discrete<N extends IAudioNode<Context>>(node: N, channels: number): N {
  node.channelCount = channels;
  node.channelCountMode = "explicit";
  node.channelInterpretation = "discrete";
  return node;
}
